/**
 * SPDX-License-Identifier: EPL-2.0
 */
package wainscribe.model.impl;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import wainscribe.model.Box;
import wainscribe.model.BoxType;
import wainscribe.model.WainscribePackage;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Box</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link wainscribe.model.impl.BoxImpl#getType <em>Type</em>}</li>
 *   <li>{@link wainscribe.model.impl.BoxImpl#getGang <em>Gang</em>}</li>
 *   <li>{@link wainscribe.model.impl.BoxImpl#getGfci <em>Gfci</em>}</li>
 *   <li>{@link wainscribe.model.impl.BoxImpl#getShaver <em>Shaver</em>}</li>
 * </ul>
 *
 * @generated
 */
public class BoxImpl extends PlacedImpl implements Box {
	/**
	 * The default value of the '{@link #getType() <em>Type</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getType()
	 * @generated
	 * @ordered
	 */
	protected static final BoxType TYPE_EDEFAULT = BoxType.UNRECORDED;

	/**
	 * The cached value of the '{@link #getType() <em>Type</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getType()
	 * @generated
	 * @ordered
	 */
	protected BoxType type = TYPE_EDEFAULT;

	/**
	 * The default value of the '{@link #getGang() <em>Gang</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGang()
	 * @generated
	 * @ordered
	 */
	protected static final Integer GANG_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getGang() <em>Gang</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGang()
	 * @generated
	 * @ordered
	 */
	protected Integer gang = GANG_EDEFAULT;

	/**
	 * The default value of the '{@link #getGfci() <em>Gfci</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGfci()
	 * @generated
	 * @ordered
	 */
	protected static final Boolean GFCI_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getGfci() <em>Gfci</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGfci()
	 * @generated
	 * @ordered
	 */
	protected Boolean gfci = GFCI_EDEFAULT;

	/**
	 * The default value of the '{@link #getShaver() <em>Shaver</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getShaver()
	 * @generated
	 * @ordered
	 */
	protected static final Boolean SHAVER_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getShaver() <em>Shaver</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getShaver()
	 * @generated
	 * @ordered
	 */
	protected Boolean shaver = SHAVER_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected BoxImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return WainscribePackage.Literals.BOX;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public BoxType getType() {
		return type;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setType(BoxType newType) {
		BoxType oldType = type;
		type = newType == null ? TYPE_EDEFAULT : newType;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.BOX__TYPE, oldType, type));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Integer getGang() {
		return gang;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setGang(Integer newGang) {
		Integer oldGang = gang;
		gang = newGang;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.BOX__GANG, oldGang, gang));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Boolean getGfci() {
		return gfci;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setGfci(Boolean newGfci) {
		Boolean oldGfci = gfci;
		gfci = newGfci;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.BOX__GFCI, oldGfci, gfci));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Boolean getShaver() {
		return shaver;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setShaver(Boolean newShaver) {
		Boolean oldShaver = shaver;
		shaver = newShaver;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.BOX__SHAVER, oldShaver, shaver));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case WainscribePackage.BOX__TYPE:
				return getType();
			case WainscribePackage.BOX__GANG:
				return getGang();
			case WainscribePackage.BOX__GFCI:
				return getGfci();
			case WainscribePackage.BOX__SHAVER:
				return getShaver();
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
			case WainscribePackage.BOX__TYPE:
				setType((BoxType)newValue);
				return;
			case WainscribePackage.BOX__GANG:
				setGang((Integer)newValue);
				return;
			case WainscribePackage.BOX__GFCI:
				setGfci((Boolean)newValue);
				return;
			case WainscribePackage.BOX__SHAVER:
				setShaver((Boolean)newValue);
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
			case WainscribePackage.BOX__TYPE:
				setType(TYPE_EDEFAULT);
				return;
			case WainscribePackage.BOX__GANG:
				setGang(GANG_EDEFAULT);
				return;
			case WainscribePackage.BOX__GFCI:
				setGfci(GFCI_EDEFAULT);
				return;
			case WainscribePackage.BOX__SHAVER:
				setShaver(SHAVER_EDEFAULT);
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
			case WainscribePackage.BOX__TYPE:
				return type != TYPE_EDEFAULT;
			case WainscribePackage.BOX__GANG:
				return GANG_EDEFAULT == null ? gang != null : !GANG_EDEFAULT.equals(gang);
			case WainscribePackage.BOX__GFCI:
				return GFCI_EDEFAULT == null ? gfci != null : !GFCI_EDEFAULT.equals(gfci);
			case WainscribePackage.BOX__SHAVER:
				return SHAVER_EDEFAULT == null ? shaver != null : !SHAVER_EDEFAULT.equals(shaver);
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
		result.append(", gang: ");
		result.append(gang);
		result.append(", gfci: ");
		result.append(gfci);
		result.append(", shaver: ");
		result.append(shaver);
		result.append(')');
		return result.toString();
	}

} //BoxImpl
