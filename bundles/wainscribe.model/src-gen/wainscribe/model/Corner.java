/**
 * SPDX-License-Identifier: EPL-2.0
 */
package wainscribe.model;

import wainscribe.model.length.Length;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Corner</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A corner measured by a triangle: two legs along the walls from the corner and the diagonal between their ends.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link wainscribe.model.Corner#getLegThis <em>Leg This</em>}</li>
 *   <li>{@link wainscribe.model.Corner#getLegNext <em>Leg Next</em>}</li>
 *   <li>{@link wainscribe.model.Corner#getDiagonal <em>Diagonal</em>}</li>
 * </ul>
 *
 * @see wainscribe.model.WainscribePackage#getCorner()
 * @model
 * @generated
 */
public interface Corner extends Element {
	/**
	 * Returns the value of the '<em><b>Leg This</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Leg along the wall whose right end the corner is.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Leg This</em>' attribute.
	 * @see #setLegThis(Length)
	 * @see wainscribe.model.WainscribePackage#getCorner_LegThis()
	 * @model dataType="wainscribe.model.Length"
	 * @generated
	 */
	Length getLegThis();

	/**
	 * Sets the value of the '{@link wainscribe.model.Corner#getLegThis <em>Leg This</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Leg This</em>' attribute.
	 * @see #getLegThis()
	 * @generated
	 */
	void setLegThis(Length value);

	/**
	 * Returns the value of the '<em><b>Leg Next</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Leg along the next wall.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Leg Next</em>' attribute.
	 * @see #setLegNext(Length)
	 * @see wainscribe.model.WainscribePackage#getCorner_LegNext()
	 * @model dataType="wainscribe.model.Length"
	 * @generated
	 */
	Length getLegNext();

	/**
	 * Sets the value of the '{@link wainscribe.model.Corner#getLegNext <em>Leg Next</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Leg Next</em>' attribute.
	 * @see #getLegNext()
	 * @generated
	 */
	void setLegNext(Length value);

	/**
	 * Returns the value of the '<em><b>Diagonal</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Distance between the ends of the legs.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Diagonal</em>' attribute.
	 * @see #setDiagonal(Length)
	 * @see wainscribe.model.WainscribePackage#getCorner_Diagonal()
	 * @model dataType="wainscribe.model.Length"
	 * @generated
	 */
	Length getDiagonal();

	/**
	 * Sets the value of the '{@link wainscribe.model.Corner#getDiagonal <em>Diagonal</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Diagonal</em>' attribute.
	 * @see #getDiagonal()
	 * @generated
	 */
	void setDiagonal(Length value);

} // Corner
