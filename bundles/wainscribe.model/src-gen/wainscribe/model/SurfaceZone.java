/**
 * SPDX-License-Identifier: EPL-2.0
 */
package wainscribe.model;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Surface Zone</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * The area that takes one finish: a kind of surface, on all walls or on some.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link wainscribe.model.SurfaceZone#getSurface <em>Surface</em>}</li>
 *   <li>{@link wainscribe.model.SurfaceZone#getWalls <em>Walls</em>}</li>
 * </ul>
 *
 * @see wainscribe.model.WainscribePackage#getSurfaceZone()
 * @model
 * @generated
 */
public interface SurfaceZone extends EObject {
	/**
	 * Returns the value of the '<em><b>Surface</b></em>' attribute.
	 * The literals are from the enumeration {@link wainscribe.model.Surface}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Kind of surface.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Surface</em>' attribute.
	 * @see wainscribe.model.Surface
	 * @see #setSurface(Surface)
	 * @see wainscribe.model.WainscribePackage#getSurfaceZone_Surface()
	 * @model
	 * @generated
	 */
	Surface getSurface();

	/**
	 * Sets the value of the '{@link wainscribe.model.SurfaceZone#getSurface <em>Surface</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Surface</em>' attribute.
	 * @see wainscribe.model.Surface
	 * @see #getSurface()
	 * @generated
	 */
	void setSurface(Surface value);

	/**
	 * Returns the value of the '<em><b>Walls</b></em>' attribute list.
	 * The list contents are of type {@link java.lang.String}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Names of the walls; empty: all walls of the room.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Walls</em>' attribute list.
	 * @see wainscribe.model.WainscribePackage#getSurfaceZone_Walls()
	 * @model
	 * @generated
	 */
	EList<String> getWalls();

} // SurfaceZone
