/**
 * SPDX-License-Identifier: EPL-2.0
 */
package wainscribe.model;

import wainscribe.model.length.Length;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Diagonal</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A distance on plan from the left end of one wall to the left end of another.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link wainscribe.model.Diagonal#getFrom <em>From</em>}</li>
 *   <li>{@link wainscribe.model.Diagonal#getTo <em>To</em>}</li>
 *   <li>{@link wainscribe.model.Diagonal#getDistance <em>Distance</em>}</li>
 * </ul>
 *
 * @see wainscribe.model.WainscribePackage#getDiagonal()
 * @model
 * @generated
 */
public interface Diagonal extends Element {
	/**
	 * Returns the value of the '<em><b>From</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Wall at whose left end it begins.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>From</em>' reference.
	 * @see #setFrom(Wall)
	 * @see wainscribe.model.WainscribePackage#getDiagonal_From()
	 * @model resolveProxies="false"
	 * @generated
	 */
	Wall getFrom();

	/**
	 * Sets the value of the '{@link wainscribe.model.Diagonal#getFrom <em>From</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>From</em>' reference.
	 * @see #getFrom()
	 * @generated
	 */
	void setFrom(Wall value);

	/**
	 * Returns the value of the '<em><b>To</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Wall at whose left end it ends.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>To</em>' reference.
	 * @see #setTo(Wall)
	 * @see wainscribe.model.WainscribePackage#getDiagonal_To()
	 * @model resolveProxies="false"
	 * @generated
	 */
	Wall getTo();

	/**
	 * Sets the value of the '{@link wainscribe.model.Diagonal#getTo <em>To</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>To</em>' reference.
	 * @see #getTo()
	 * @generated
	 */
	void setTo(Wall value);

	/**
	 * Returns the value of the '<em><b>Distance</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The distance measured.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Distance</em>' attribute.
	 * @see #setDistance(Length)
	 * @see wainscribe.model.WainscribePackage#getDiagonal_Distance()
	 * @model dataType="wainscribe.model.Length"
	 * @generated
	 */
	Length getDistance();

	/**
	 * Sets the value of the '{@link wainscribe.model.Diagonal#getDistance <em>Distance</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Distance</em>' attribute.
	 * @see #getDistance()
	 * @generated
	 */
	void setDistance(Length value);

} // Diagonal
