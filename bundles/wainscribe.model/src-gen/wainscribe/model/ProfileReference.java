/**
 * SPDX-License-Identifier: EPL-2.0
 */
package wainscribe.model;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Profile Reference</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A choice of a trim profile for one use.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link wainscribe.model.ProfileReference#getUse <em>Use</em>}</li>
 *   <li>{@link wainscribe.model.ProfileReference#getProfile <em>Profile</em>}</li>
 * </ul>
 *
 * @see wainscribe.model.WainscribePackage#getProfileReference()
 * @model
 * @generated
 */
public interface ProfileReference extends EObject {
	/**
	 * Returns the value of the '<em><b>Use</b></em>' attribute.
	 * The literals are from the enumeration {@link wainscribe.model.ProfileUse}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Where it is used.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Use</em>' attribute.
	 * @see wainscribe.model.ProfileUse
	 * @see #setUse(ProfileUse)
	 * @see wainscribe.model.WainscribePackage#getProfileReference_Use()
	 * @model
	 * @generated
	 */
	ProfileUse getUse();

	/**
	 * Sets the value of the '{@link wainscribe.model.ProfileReference#getUse <em>Use</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Use</em>' attribute.
	 * @see wainscribe.model.ProfileUse
	 * @see #getUse()
	 * @generated
	 */
	void setUse(ProfileUse value);

	/**
	 * Returns the value of the '<em><b>Profile</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Id of a trim profile contributed to the profile catalogue.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Profile</em>' attribute.
	 * @see #setProfile(String)
	 * @see wainscribe.model.WainscribePackage#getProfileReference_Profile()
	 * @model
	 * @generated
	 */
	String getProfile();

	/**
	 * Sets the value of the '{@link wainscribe.model.ProfileReference#getProfile <em>Profile</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Profile</em>' attribute.
	 * @see #getProfile()
	 * @generated
	 */
	void setProfile(String value);

} // ProfileReference
