/**
 * SPDX-License-Identifier: EPL-2.0
 */
package wainscribe.model.impl;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import wainscribe.model.ExistingTrim;
import wainscribe.model.TrimType;
import wainscribe.model.WainscribePackage;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Existing Trim</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link wainscribe.model.impl.ExistingTrimImpl#getType <em>Type</em>}</li>
 *   <li>{@link wainscribe.model.impl.ExistingTrimImpl#getKeep <em>Keep</em>}</li>
 *   <li>{@link wainscribe.model.impl.ExistingTrimImpl#getRaked <em>Raked</em>}</li>
 * </ul>
 *
 * @generated
 */
public class ExistingTrimImpl extends PlacedImpl implements ExistingTrim {
	/**
	 * The default value of the '{@link #getType() <em>Type</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getType()
	 * @generated
	 * @ordered
	 */
	protected static final TrimType TYPE_EDEFAULT = TrimType.BASE;

	/**
	 * The cached value of the '{@link #getType() <em>Type</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getType()
	 * @generated
	 * @ordered
	 */
	protected TrimType type = TYPE_EDEFAULT;

	/**
	 * The default value of the '{@link #getKeep() <em>Keep</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getKeep()
	 * @generated
	 * @ordered
	 */
	protected static final Boolean KEEP_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getKeep() <em>Keep</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getKeep()
	 * @generated
	 * @ordered
	 */
	protected Boolean keep = KEEP_EDEFAULT;

	/**
	 * The default value of the '{@link #getRaked() <em>Raked</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRaked()
	 * @generated
	 * @ordered
	 */
	protected static final Boolean RAKED_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getRaked() <em>Raked</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRaked()
	 * @generated
	 * @ordered
	 */
	protected Boolean raked = RAKED_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected ExistingTrimImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return WainscribePackage.Literals.EXISTING_TRIM;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public TrimType getType() {
		return type;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setType(TrimType newType) {
		TrimType oldType = type;
		type = newType == null ? TYPE_EDEFAULT : newType;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.EXISTING_TRIM__TYPE, oldType, type));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Boolean getKeep() {
		return keep;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setKeep(Boolean newKeep) {
		Boolean oldKeep = keep;
		keep = newKeep;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.EXISTING_TRIM__KEEP, oldKeep, keep));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Boolean getRaked() {
		return raked;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRaked(Boolean newRaked) {
		Boolean oldRaked = raked;
		raked = newRaked;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.EXISTING_TRIM__RAKED, oldRaked, raked));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case WainscribePackage.EXISTING_TRIM__TYPE:
				return getType();
			case WainscribePackage.EXISTING_TRIM__KEEP:
				return getKeep();
			case WainscribePackage.EXISTING_TRIM__RAKED:
				return getRaked();
		}
		return super.eGet(featureID, resolve, coreType);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void eSet(int featureID, Object newValue) {
		switch (featureID) {
			case WainscribePackage.EXISTING_TRIM__TYPE:
				setType((TrimType)newValue);
				return;
			case WainscribePackage.EXISTING_TRIM__KEEP:
				setKeep((Boolean)newValue);
				return;
			case WainscribePackage.EXISTING_TRIM__RAKED:
				setRaked((Boolean)newValue);
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
			case WainscribePackage.EXISTING_TRIM__TYPE:
				setType(TYPE_EDEFAULT);
				return;
			case WainscribePackage.EXISTING_TRIM__KEEP:
				setKeep(KEEP_EDEFAULT);
				return;
			case WainscribePackage.EXISTING_TRIM__RAKED:
				setRaked(RAKED_EDEFAULT);
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
			case WainscribePackage.EXISTING_TRIM__TYPE:
				return type != TYPE_EDEFAULT;
			case WainscribePackage.EXISTING_TRIM__KEEP:
				return KEEP_EDEFAULT == null ? keep != null : !KEEP_EDEFAULT.equals(keep);
			case WainscribePackage.EXISTING_TRIM__RAKED:
				return RAKED_EDEFAULT == null ? raked != null : !RAKED_EDEFAULT.equals(raked);
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
		result.append(" (type: ");
		result.append(type);
		result.append(", keep: ");
		result.append(keep);
		result.append(", raked: ");
		result.append(raked);
		result.append(')');
		return result.toString();
	}

} //ExistingTrimImpl
