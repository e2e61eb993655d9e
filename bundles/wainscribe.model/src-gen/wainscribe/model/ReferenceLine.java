/**
 * SPDX-License-Identifier: EPL-2.0
 */
package wainscribe.model;

import wainscribe.model.length.Length;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Reference Line</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A line laid on a wall by the designer to work by. It covers nothing and moves no frame.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link wainscribe.model.ReferenceLine#getAt <em>At</em>}</li>
 * </ul>
 *
 * @see wainscribe.model.WainscribePackage#getReferenceLine()
 * @model abstract="true"
 * @generated
 */
public interface ReferenceLine extends Element {
	/**
	 * Returns the value of the '<em><b>At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Where it lies: from the left end of its wall if plumb, above the finished floor if level. Never null in a saved room.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>At</em>' attribute.
	 * @see #setAt(Length)
	 * @see wainscribe.model.WainscribePackage#getReferenceLine_At()
	 * @model dataType="wainscribe.model.Length"
	 * @generated
	 */
	Length getAt();

	/**
	 * Sets the value of the '{@link wainscribe.model.ReferenceLine#getAt <em>At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>At</em>' attribute.
	 * @see #getAt()
	 * @generated
	 */
	void setAt(Length value);

} // ReferenceLine
