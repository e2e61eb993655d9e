/**
 * SPDX-License-Identifier: EPL-2.0
 */
package wainscribe.model;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Axis</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A plumb line about which a wall is meant to be even; the layout says how far it is from a frame or gap.
 * <!-- end-model-doc -->
 *
 *
 * @see wainscribe.model.WainscribePackage#getAxis()
 * @model
 * @generated
 */
public interface Axis extends ReferenceLine {
} // Axis
