/**
 * SPDX-License-Identifier: EPL-2.0
 */
package wainscribe.model.impl;

import java.math.BigDecimal;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import wainscribe.model.Price;
import wainscribe.model.PriceUnit;
import wainscribe.model.WainscribePackage;

import wainscribe.model.length.Length;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Price</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link wainscribe.model.impl.PriceImpl#getItem <em>Item</em>}</li>
 *   <li>{@link wainscribe.model.impl.PriceImpl#getUnit <em>Unit</em>}</li>
 *   <li>{@link wainscribe.model.impl.PriceImpl#getPackLength <em>Pack Length</em>}</li>
 *   <li>{@link wainscribe.model.impl.PriceImpl#getPack <em>Pack</em>}</li>
 *   <li>{@link wainscribe.model.impl.PriceImpl#getAmount <em>Amount</em>}</li>
 * </ul>
 *
 * @generated
 */
public class PriceImpl extends ElementImpl implements Price {
	/**
	 * The default value of the '{@link #getItem() <em>Item</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getItem()
	 * @generated
	 * @ordered
	 */
	protected static final String ITEM_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getItem() <em>Item</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getItem()
	 * @generated
	 * @ordered
	 */
	protected String item = ITEM_EDEFAULT;

	/**
	 * The default value of the '{@link #getUnit() <em>Unit</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getUnit()
	 * @generated
	 * @ordered
	 */
	protected static final PriceUnit UNIT_EDEFAULT = PriceUnit.LENGTH;

	/**
	 * The cached value of the '{@link #getUnit() <em>Unit</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getUnit()
	 * @generated
	 * @ordered
	 */
	protected PriceUnit unit = UNIT_EDEFAULT;

	/**
	 * The default value of the '{@link #getPackLength() <em>Pack Length</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPackLength()
	 * @generated
	 * @ordered
	 */
	protected static final Length PACK_LENGTH_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPackLength() <em>Pack Length</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPackLength()
	 * @generated
	 * @ordered
	 */
	protected Length packLength = PACK_LENGTH_EDEFAULT;

	/**
	 * The default value of the '{@link #getPack() <em>Pack</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPack()
	 * @generated
	 * @ordered
	 */
	protected static final BigDecimal PACK_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPack() <em>Pack</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPack()
	 * @generated
	 * @ordered
	 */
	protected BigDecimal pack = PACK_EDEFAULT;

	/**
	 * The default value of the '{@link #getAmount() <em>Amount</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAmount()
	 * @generated
	 * @ordered
	 */
	protected static final BigDecimal AMOUNT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getAmount() <em>Amount</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAmount()
	 * @generated
	 * @ordered
	 */
	protected BigDecimal amount = AMOUNT_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected PriceImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return WainscribePackage.Literals.PRICE;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getItem() {
		return item;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setItem(String newItem) {
		String oldItem = item;
		item = newItem;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.PRICE__ITEM, oldItem, item));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public PriceUnit getUnit() {
		return unit;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setUnit(PriceUnit newUnit) {
		PriceUnit oldUnit = unit;
		unit = newUnit == null ? UNIT_EDEFAULT : newUnit;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.PRICE__UNIT, oldUnit, unit));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getPackLength() {
		return packLength;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPackLength(Length newPackLength) {
		Length oldPackLength = packLength;
		packLength = newPackLength;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.PRICE__PACK_LENGTH, oldPackLength, packLength));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public BigDecimal getPack() {
		return pack;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPack(BigDecimal newPack) {
		BigDecimal oldPack = pack;
		pack = newPack;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.PRICE__PACK, oldPack, pack));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public BigDecimal getAmount() {
		return amount;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAmount(BigDecimal newAmount) {
		BigDecimal oldAmount = amount;
		amount = newAmount;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.PRICE__AMOUNT, oldAmount, amount));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case WainscribePackage.PRICE__ITEM:
				return getItem();
			case WainscribePackage.PRICE__UNIT:
				return getUnit();
			case WainscribePackage.PRICE__PACK_LENGTH:
				return getPackLength();
			case WainscribePackage.PRICE__PACK:
				return getPack();
			case WainscribePackage.PRICE__AMOUNT:
				return getAmount();
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
			case WainscribePackage.PRICE__ITEM:
				setItem((String)newValue);
				return;
			case WainscribePackage.PRICE__UNIT:
				setUnit((PriceUnit)newValue);
				return;
			case WainscribePackage.PRICE__PACK_LENGTH:
				setPackLength((Length)newValue);
				return;
			case WainscribePackage.PRICE__PACK:
				setPack((BigDecimal)newValue);
				return;
			case WainscribePackage.PRICE__AMOUNT:
				setAmount((BigDecimal)newValue);
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
			case WainscribePackage.PRICE__ITEM:
				setItem(ITEM_EDEFAULT);
				return;
			case WainscribePackage.PRICE__UNIT:
				setUnit(UNIT_EDEFAULT);
				return;
			case WainscribePackage.PRICE__PACK_LENGTH:
				setPackLength(PACK_LENGTH_EDEFAULT);
				return;
			case WainscribePackage.PRICE__PACK:
				setPack(PACK_EDEFAULT);
				return;
			case WainscribePackage.PRICE__AMOUNT:
				setAmount(AMOUNT_EDEFAULT);
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
			case WainscribePackage.PRICE__ITEM:
				return ITEM_EDEFAULT == null ? item != null : !ITEM_EDEFAULT.equals(item);
			case WainscribePackage.PRICE__UNIT:
				return unit != UNIT_EDEFAULT;
			case WainscribePackage.PRICE__PACK_LENGTH:
				return PACK_LENGTH_EDEFAULT == null ? packLength != null : !PACK_LENGTH_EDEFAULT.equals(packLength);
			case WainscribePackage.PRICE__PACK:
				return PACK_EDEFAULT == null ? pack != null : !PACK_EDEFAULT.equals(pack);
			case WainscribePackage.PRICE__AMOUNT:
				return AMOUNT_EDEFAULT == null ? amount != null : !AMOUNT_EDEFAULT.equals(amount);
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
		result.append(" (item: ");
		result.append(item);
		result.append(", unit: ");
		result.append(unit);
		result.append(", packLength: ");
		result.append(packLength);
		result.append(", pack: ");
		result.append(pack);
		result.append(", amount: ");
		result.append(amount);
		result.append(')');
		return result.toString();
	}

} //PriceImpl
