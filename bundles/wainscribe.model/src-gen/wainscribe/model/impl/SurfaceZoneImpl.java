/**
 * SPDX-License-Identifier: EPL-2.0
 */
package wainscribe.model.impl;

import java.util.Collection;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

import org.eclipse.emf.ecore.util.EDataTypeUniqueEList;

import wainscribe.model.Surface;
import wainscribe.model.SurfaceZone;
import wainscribe.model.WainscribePackage;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Surface Zone</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link wainscribe.model.impl.SurfaceZoneImpl#getSurface <em>Surface</em>}</li>
 *   <li>{@link wainscribe.model.impl.SurfaceZoneImpl#getWalls <em>Walls</em>}</li>
 * </ul>
 *
 * @generated
 */
public class SurfaceZoneImpl extends MinimalEObjectImpl.Container implements SurfaceZone {
	/**
	 * The default value of the '{@link #getSurface() <em>Surface</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSurface()
	 * @generated
	 * @ordered
	 */
	protected static final Surface SURFACE_EDEFAULT = Surface.WALLS;

	/**
	 * The cached value of the '{@link #getSurface() <em>Surface</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSurface()
	 * @generated
	 * @ordered
	 */
	protected Surface surface = SURFACE_EDEFAULT;

	/**
	 * The cached value of the '{@link #getWalls() <em>Walls</em>}' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWalls()
	 * @generated
	 * @ordered
	 */
	protected EList<String> walls;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected SurfaceZoneImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return WainscribePackage.Literals.SURFACE_ZONE;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Surface getSurface() {
		return surface;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSurface(Surface newSurface) {
		Surface oldSurface = surface;
		surface = newSurface == null ? SURFACE_EDEFAULT : newSurface;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.SURFACE_ZONE__SURFACE, oldSurface, surface));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<String> getWalls() {
		if (walls == null) {
			walls = new EDataTypeUniqueEList<String>(String.class, this, WainscribePackage.SURFACE_ZONE__WALLS);
		}
		return walls;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case WainscribePackage.SURFACE_ZONE__SURFACE:
				return getSurface();
			case WainscribePackage.SURFACE_ZONE__WALLS:
				return getWalls();
		}
		return super.eGet(featureID, resolve, coreType);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public void eSet(int featureID, Object newValue) {
		switch (featureID) {
			case WainscribePackage.SURFACE_ZONE__SURFACE:
				setSurface((Surface)newValue);
				return;
			case WainscribePackage.SURFACE_ZONE__WALLS:
				getWalls().clear();
				getWalls().addAll((Collection<? extends String>)newValue);
				return;
		}
		super.eSet(featureID, newValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void eUnset(int featureID) {
		switch (featureID) {
			case WainscribePackage.SURFACE_ZONE__SURFACE:
				setSurface(SURFACE_EDEFAULT);
				return;
			case WainscribePackage.SURFACE_ZONE__WALLS:
				getWalls().clear();
				return;
		}
		super.eUnset(featureID);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean eIsSet(int featureID) {
		switch (featureID) {
			case WainscribePackage.SURFACE_ZONE__SURFACE:
				return surface != SURFACE_EDEFAULT;
			case WainscribePackage.SURFACE_ZONE__WALLS:
				return walls != null && !walls.isEmpty();
		}
		return super.eIsSet(featureID);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String toString() {
		if (eIsProxy()) return super.toString();

		StringBuilder result = new StringBuilder(super.toString());
		result.append(" (surface: ");
		result.append(surface);
		result.append(", walls: ");
		result.append(walls);
		result.append(')');
		return result.toString();
	}

} //SurfaceZoneImpl
