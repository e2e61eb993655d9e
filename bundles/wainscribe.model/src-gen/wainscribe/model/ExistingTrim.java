/**
 * SPDX-License-Identifier: EPL-2.0
 */
package wainscribe.model;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Existing Trim</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A moulding that is on the wall now. width null: to the end of the wall. height is the face, depth the projection.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link wainscribe.model.ExistingTrim#getType <em>Type</em>}</li>
 *   <li>{@link wainscribe.model.ExistingTrim#getKeep <em>Keep</em>}</li>
 *   <li>{@link wainscribe.model.ExistingTrim#getRaked <em>Raked</em>}</li>
 * </ul>
 *
 * @see wainscribe.model.WainscribePackage#getExistingTrim()
 * @model
 * @generated
 */
public interface ExistingTrim extends Placed {
	/**
	 * Returns the value of the '<em><b>Type</b></em>' attribute.
	 * The literals are from the enumeration {@link wainscribe.model.TrimType}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What it is.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Type</em>' attribute.
	 * @see wainscribe.model.TrimType
	 * @see #setType(TrimType)
	 * @see wainscribe.model.WainscribePackage#getExistingTrim_Type()
	 * @model
	 * @generated
	 */
	TrimType getType();

	/**
	 * Sets the value of the '{@link wainscribe.model.ExistingTrim#getType <em>Type</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Type</em>' attribute.
	 * @see wainscribe.model.TrimType
	 * @see #getType()
	 * @generated
	 */
	void setType(TrimType value);

	/**
	 * Returns the value of the '<em><b>Keep</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * False: it goes. Null: it stays.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Keep</em>' attribute.
	 * @see #setKeep(Boolean)
	 * @see wainscribe.model.WainscribePackage#getExistingTrim_Keep()
	 * @model
	 * @generated
	 */
	Boolean getKeep();

	/**
	 * Sets the value of the '{@link wainscribe.model.ExistingTrim#getKeep <em>Keep</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Keep</em>' attribute.
	 * @see #getKeep()
	 * @generated
	 */
	void setKeep(Boolean value);

	/**
	 * Returns the value of the '<em><b>Raked</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * True: it follows a slope. Null: level.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Raked</em>' attribute.
	 * @see #setRaked(Boolean)
	 * @see wainscribe.model.WainscribePackage#getExistingTrim_Raked()
	 * @model
	 * @generated
	 */
	Boolean getRaked();

	/**
	 * Sets the value of the '{@link wainscribe.model.ExistingTrim#getRaked <em>Raked</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Raked</em>' attribute.
	 * @see #getRaked()
	 * @generated
	 */
	void setRaked(Boolean value);

} // ExistingTrim
