/**
 * SPDX-License-Identifier: EPL-2.0
 */
package wainscribe.model;

import wainscribe.model.length.Length;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Stored Offcut</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A leftover of moulding. name is what is written on it.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link wainscribe.model.StoredOffcut#getProfile <em>Profile</em>}</li>
 *   <li>{@link wainscribe.model.StoredOffcut#getMaterial <em>Material</em>}</li>
 *   <li>{@link wainscribe.model.StoredOffcut#getLength <em>Length</em>}</li>
 *   <li>{@link wainscribe.model.StoredOffcut#getOrigin <em>Origin</em>}</li>
 * </ul>
 *
 * @see wainscribe.model.WainscribePackage#getStoredOffcut()
 * @model
 * @generated
 */
public interface StoredOffcut extends Element {
	/**
	 * Returns the value of the '<em><b>Profile</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What it was cut from: the id of a profile, or kind, face and thickness as the cut list writes them.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Profile</em>' attribute.
	 * @see #setProfile(String)
	 * @see wainscribe.model.WainscribePackage#getStoredOffcut_Profile()
	 * @model
	 * @generated
	 */
	String getProfile();

	/**
	 * Sets the value of the '{@link wainscribe.model.StoredOffcut#getProfile <em>Profile</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Profile</em>' attribute.
	 * @see #getProfile()
	 * @generated
	 */
	void setProfile(String value);

	/**
	 * Returns the value of the '<em><b>Material</b></em>' attribute.
	 * The literals are from the enumeration {@link wainscribe.model.Material}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What it is made of.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Material</em>' attribute.
	 * @see wainscribe.model.Material
	 * @see #setMaterial(Material)
	 * @see wainscribe.model.WainscribePackage#getStoredOffcut_Material()
	 * @model
	 * @generated
	 */
	Material getMaterial();

	/**
	 * Sets the value of the '{@link wainscribe.model.StoredOffcut#getMaterial <em>Material</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Material</em>' attribute.
	 * @see wainscribe.model.Material
	 * @see #getMaterial()
	 * @generated
	 */
	void setMaterial(Material value);

	/**
	 * Returns the value of the '<em><b>Length</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Its length.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Length</em>' attribute.
	 * @see #setLength(Length)
	 * @see wainscribe.model.WainscribePackage#getStoredOffcut_Length()
	 * @model dataType="wainscribe.model.Length"
	 * @generated
	 */
	Length getLength();

	/**
	 * Sets the value of the '{@link wainscribe.model.StoredOffcut#getLength <em>Length</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Length</em>' attribute.
	 * @see #getLength()
	 * @generated
	 */
	void setLength(Length value);

	/**
	 * Returns the value of the '<em><b>Origin</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Where it comes from, for the carpenter. Null: not recorded.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Origin</em>' attribute.
	 * @see #setOrigin(String)
	 * @see wainscribe.model.WainscribePackage#getStoredOffcut_Origin()
	 * @model
	 * @generated
	 */
	String getOrigin();

	/**
	 * Sets the value of the '{@link wainscribe.model.StoredOffcut#getOrigin <em>Origin</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Origin</em>' attribute.
	 * @see #getOrigin()
	 * @generated
	 */
	void setOrigin(String value);

} // StoredOffcut
