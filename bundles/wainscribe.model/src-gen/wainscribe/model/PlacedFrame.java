/**
 * SPDX-License-Identifier: EPL-2.0
 */
package wainscribe.model;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Placed Frame</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * An override: a panel frame placed and locked by hand. The outline is the outer edge of the moulding.
 * <!-- end-model-doc -->
 *
 *
 * @see wainscribe.model.WainscribePackage#getPlacedFrame()
 * @model
 * @generated
 */
public interface PlacedFrame extends Placed {
} // PlacedFrame
