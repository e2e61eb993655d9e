/**
 * SPDX-License-Identifier: EPL-2.0
 */
package wainscribe.model;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Service</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A stud, pipe or cable inside the wall; depth is from the wall face.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link wainscribe.model.Service#getKind <em>Kind</em>}</li>
 * </ul>
 *
 * @see wainscribe.model.WainscribePackage#getService()
 * @model
 * @generated
 */
public interface Service extends Placed {
	/**
	 * Returns the value of the '<em><b>Kind</b></em>' attribute.
	 * The literals are from the enumeration {@link wainscribe.model.ServiceKind}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What it is.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Kind</em>' attribute.
	 * @see wainscribe.model.ServiceKind
	 * @see #setKind(ServiceKind)
	 * @see wainscribe.model.WainscribePackage#getService_Kind()
	 * @model
	 * @generated
	 */
	ServiceKind getKind();

	/**
	 * Sets the value of the '{@link wainscribe.model.Service#getKind <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Kind</em>' attribute.
	 * @see wainscribe.model.ServiceKind
	 * @see #getKind()
	 * @generated
	 */
	void setKind(ServiceKind value);

} // Service
