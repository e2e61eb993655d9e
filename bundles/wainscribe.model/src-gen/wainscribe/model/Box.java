/**
 * SPDX-License-Identifier: EPL-2.0
 */
package wainscribe.model;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Box</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * An electrical box; the outline is that of its cover plate.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link wainscribe.model.Box#getType <em>Type</em>}</li>
 *   <li>{@link wainscribe.model.Box#getGang <em>Gang</em>}</li>
 *   <li>{@link wainscribe.model.Box#getGfci <em>Gfci</em>}</li>
 *   <li>{@link wainscribe.model.Box#getShaver <em>Shaver</em>}</li>
 * </ul>
 *
 * @see wainscribe.model.WainscribePackage#getBox()
 * @model
 * @generated
 */
public interface Box extends Placed {
	/**
	 * Returns the value of the '<em><b>Type</b></em>' attribute.
	 * The literals are from the enumeration {@link wainscribe.model.BoxType}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What it serves.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Type</em>' attribute.
	 * @see wainscribe.model.BoxType
	 * @see #setType(BoxType)
	 * @see wainscribe.model.WainscribePackage#getBox_Type()
	 * @model
	 * @generated
	 */
	BoxType getType();

	/**
	 * Sets the value of the '{@link wainscribe.model.Box#getType <em>Type</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Type</em>' attribute.
	 * @see wainscribe.model.BoxType
	 * @see #getType()
	 * @generated
	 */
	void setType(BoxType value);

	/**
	 * Returns the value of the '<em><b>Gang</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Number of gangs. Null: the plate was measured.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Gang</em>' attribute.
	 * @see #setGang(Integer)
	 * @see wainscribe.model.WainscribePackage#getBox_Gang()
	 * @model
	 * @generated
	 */
	Integer getGang();

	/**
	 * Sets the value of the '{@link wainscribe.model.Box#getGang <em>Gang</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Gang</em>' attribute.
	 * @see #getGang()
	 * @generated
	 */
	void setGang(Integer value);

	/**
	 * Returns the value of the '<em><b>Gfci</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Protected against ground faults. Null: not recorded.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Gfci</em>' attribute.
	 * @see #setGfci(Boolean)
	 * @see wainscribe.model.WainscribePackage#getBox_Gfci()
	 * @model
	 * @generated
	 */
	Boolean getGfci();

	/**
	 * Sets the value of the '{@link wainscribe.model.Box#getGfci <em>Gfci</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Gfci</em>' attribute.
	 * @see #getGfci()
	 * @generated
	 */
	void setGfci(Boolean value);

	/**
	 * Returns the value of the '<em><b>Shaver</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A shaver supply unit. Null: not recorded.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Shaver</em>' attribute.
	 * @see #setShaver(Boolean)
	 * @see wainscribe.model.WainscribePackage#getBox_Shaver()
	 * @model
	 * @generated
	 */
	Boolean getShaver();

	/**
	 * Sets the value of the '{@link wainscribe.model.Box#getShaver <em>Shaver</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Shaver</em>' attribute.
	 * @see #getShaver()
	 * @generated
	 */
	void setShaver(Boolean value);

} // Box
