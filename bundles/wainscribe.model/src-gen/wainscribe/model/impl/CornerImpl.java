/**
 * SPDX-License-Identifier: EPL-2.0
 */
package wainscribe.model.impl;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import wainscribe.model.Corner;
import wainscribe.model.WainscribePackage;

import wainscribe.model.length.Length;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Corner</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link wainscribe.model.impl.CornerImpl#getLegThis <em>Leg This</em>}</li>
 *   <li>{@link wainscribe.model.impl.CornerImpl#getLegNext <em>Leg Next</em>}</li>
 *   <li>{@link wainscribe.model.impl.CornerImpl#getDiagonal <em>Diagonal</em>}</li>
 * </ul>
 *
 * @generated
 */
public class CornerImpl extends ElementImpl implements Corner {
	/**
	 * The default value of the '{@link #getLegThis() <em>Leg This</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLegThis()
	 * @generated
	 * @ordered
	 */
	protected static final Length LEG_THIS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getLegThis() <em>Leg This</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLegThis()
	 * @generated
	 * @ordered
	 */
	protected Length legThis = LEG_THIS_EDEFAULT;

	/**
	 * The default value of the '{@link #getLegNext() <em>Leg Next</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLegNext()
	 * @generated
	 * @ordered
	 */
	protected static final Length LEG_NEXT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getLegNext() <em>Leg Next</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLegNext()
	 * @generated
	 * @ordered
	 */
	protected Length legNext = LEG_NEXT_EDEFAULT;

	/**
	 * The default value of the '{@link #getDiagonal() <em>Diagonal</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDiagonal()
	 * @generated
	 * @ordered
	 */
	protected static final Length DIAGONAL_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getDiagonal() <em>Diagonal</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDiagonal()
	 * @generated
	 * @ordered
	 */
	protected Length diagonal = DIAGONAL_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected CornerImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return WainscribePackage.Literals.CORNER;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getLegThis() {
		return legThis;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLegThis(Length newLegThis) {
		Length oldLegThis = legThis;
		legThis = newLegThis;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.CORNER__LEG_THIS, oldLegThis, legThis));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getLegNext() {
		return legNext;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLegNext(Length newLegNext) {
		Length oldLegNext = legNext;
		legNext = newLegNext;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.CORNER__LEG_NEXT, oldLegNext, legNext));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getDiagonal() {
		return diagonal;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDiagonal(Length newDiagonal) {
		Length oldDiagonal = diagonal;
		diagonal = newDiagonal;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.CORNER__DIAGONAL, oldDiagonal, diagonal));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case WainscribePackage.CORNER__LEG_THIS:
				return getLegThis();
			case WainscribePackage.CORNER__LEG_NEXT:
				return getLegNext();
			case WainscribePackage.CORNER__DIAGONAL:
				return getDiagonal();
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
			case WainscribePackage.CORNER__LEG_THIS:
				setLegThis((Length)newValue);
				return;
			case WainscribePackage.CORNER__LEG_NEXT:
				setLegNext((Length)newValue);
				return;
			case WainscribePackage.CORNER__DIAGONAL:
				setDiagonal((Length)newValue);
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
			case WainscribePackage.CORNER__LEG_THIS:
				setLegThis(LEG_THIS_EDEFAULT);
				return;
			case WainscribePackage.CORNER__LEG_NEXT:
				setLegNext(LEG_NEXT_EDEFAULT);
				return;
			case WainscribePackage.CORNER__DIAGONAL:
				setDiagonal(DIAGONAL_EDEFAULT);
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
			case WainscribePackage.CORNER__LEG_THIS:
				return LEG_THIS_EDEFAULT == null ? legThis != null : !LEG_THIS_EDEFAULT.equals(legThis);
			case WainscribePackage.CORNER__LEG_NEXT:
				return LEG_NEXT_EDEFAULT == null ? legNext != null : !LEG_NEXT_EDEFAULT.equals(legNext);
			case WainscribePackage.CORNER__DIAGONAL:
				return DIAGONAL_EDEFAULT == null ? diagonal != null : !DIAGONAL_EDEFAULT.equals(diagonal);
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
		result.append(" (legThis: ");
		result.append(legThis);
		result.append(", legNext: ");
		result.append(legNext);
		result.append(", diagonal: ");
		result.append(diagonal);
		result.append(')');
		return result.toString();
	}

} //CornerImpl
