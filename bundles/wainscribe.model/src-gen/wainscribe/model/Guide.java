/**
 * SPDX-License-Identifier: EPL-2.0
 */
package wainscribe.model;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Guide</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A line that things are drawn to while they are moved.
 * <!-- end-model-doc -->
 *
 *
 * @see wainscribe.model.WainscribePackage#getGuide()
 * @model
 * @generated
 */
public interface Guide extends ReferenceLine {
} // Guide
