/**
 * SPDX-License-Identifier: EPL-2.0
 */
package wainscribe.model.impl;

import java.util.Collection;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.eclipse.emf.ecore.util.EDataTypeUniqueEList;
import org.eclipse.emf.ecore.util.EObjectContainmentEList;
import org.eclipse.emf.ecore.util.InternalEList;

import wainscribe.model.Brief;
import wainscribe.model.CutBar;
import wainscribe.model.Home;
import wainscribe.model.Paint;
import wainscribe.model.Price;
import wainscribe.model.StoredOffcut;
import wainscribe.model.WainscribeFactory;
import wainscribe.model.WainscribePackage;

import wainscribe.model.length.Length;
import wainscribe.model.length.LengthUnit;

import wainscribe.model.measure.Measure;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Home</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link wainscribe.model.impl.HomeImpl#getFormatVersion <em>Format Version</em>}</li>
 *   <li>{@link wainscribe.model.impl.HomeImpl#getUnits <em>Units</em>}</li>
 *   <li>{@link wainscribe.model.impl.HomeImpl#getCountry <em>Country</em>}</li>
 *   <li>{@link wainscribe.model.impl.HomeImpl#getBuilt <em>Built</em>}</li>
 *   <li>{@link wainscribe.model.impl.HomeImpl#getCurrency <em>Currency</em>}</li>
 *   <li>{@link wainscribe.model.impl.HomeImpl#getTax <em>Tax</em>}</li>
 *   <li>{@link wainscribe.model.impl.HomeImpl#getRoomOrder <em>Room Order</em>}</li>
 *   <li>{@link wainscribe.model.impl.HomeImpl#getBrief <em>Brief</em>}</li>
 *   <li>{@link wainscribe.model.impl.HomeImpl#getPaints <em>Paints</em>}</li>
 *   <li>{@link wainscribe.model.impl.HomeImpl#getPrices <em>Prices</em>}</li>
 *   <li>{@link wainscribe.model.impl.HomeImpl#getKerf <em>Kerf</em>}</li>
 *   <li>{@link wainscribe.model.impl.HomeImpl#getEndTrim <em>End Trim</em>}</li>
 *   <li>{@link wainscribe.model.impl.HomeImpl#getShortestOffcut <em>Shortest Offcut</em>}</li>
 *   <li>{@link wainscribe.model.impl.HomeImpl#getOffcuts <em>Offcuts</em>}</li>
 *   <li>{@link wainscribe.model.impl.HomeImpl#getCutBars <em>Cut Bars</em>}</li>
 * </ul>
 *
 * @generated
 */
public class HomeImpl extends ElementImpl implements Home {
	/**
	 * The default value of the '{@link #getFormatVersion() <em>Format Version</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFormatVersion()
	 * @generated
	 * @ordered
	 */
	protected static final int FORMAT_VERSION_EDEFAULT = 1;

	/**
	 * The cached value of the '{@link #getFormatVersion() <em>Format Version</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFormatVersion()
	 * @generated
	 * @ordered
	 */
	protected int formatVersion = FORMAT_VERSION_EDEFAULT;

	/**
	 * The default value of the '{@link #getUnits() <em>Units</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getUnits()
	 * @generated
	 * @ordered
	 */
	protected static final LengthUnit UNITS_EDEFAULT = (LengthUnit)WainscribeFactory.eINSTANCE.createFromString(WainscribePackage.eINSTANCE.getLengthUnit(), "mm");

	/**
	 * The cached value of the '{@link #getUnits() <em>Units</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getUnits()
	 * @generated
	 * @ordered
	 */
	protected LengthUnit units = UNITS_EDEFAULT;

	/**
	 * The default value of the '{@link #getCountry() <em>Country</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCountry()
	 * @generated
	 * @ordered
	 */
	protected static final String COUNTRY_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCountry() <em>Country</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCountry()
	 * @generated
	 * @ordered
	 */
	protected String country = COUNTRY_EDEFAULT;

	/**
	 * The default value of the '{@link #getBuilt() <em>Built</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBuilt()
	 * @generated
	 * @ordered
	 */
	protected static final Integer BUILT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getBuilt() <em>Built</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBuilt()
	 * @generated
	 * @ordered
	 */
	protected Integer built = BUILT_EDEFAULT;

	/**
	 * The default value of the '{@link #getCurrency() <em>Currency</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCurrency()
	 * @generated
	 * @ordered
	 */
	protected static final String CURRENCY_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCurrency() <em>Currency</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCurrency()
	 * @generated
	 * @ordered
	 */
	protected String currency = CURRENCY_EDEFAULT;

	/**
	 * The default value of the '{@link #getTax() <em>Tax</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTax()
	 * @generated
	 * @ordered
	 */
	protected static final Measure TAX_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getTax() <em>Tax</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTax()
	 * @generated
	 * @ordered
	 */
	protected Measure tax = TAX_EDEFAULT;

	/**
	 * The cached value of the '{@link #getRoomOrder() <em>Room Order</em>}' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRoomOrder()
	 * @generated
	 * @ordered
	 */
	protected EList<String> roomOrder;

	/**
	 * The cached value of the '{@link #getBrief() <em>Brief</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBrief()
	 * @generated
	 * @ordered
	 */
	protected Brief brief;

	/**
	 * The cached value of the '{@link #getPaints() <em>Paints</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPaints()
	 * @generated
	 * @ordered
	 */
	protected EList<Paint> paints;

	/**
	 * The cached value of the '{@link #getPrices() <em>Prices</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPrices()
	 * @generated
	 * @ordered
	 */
	protected EList<Price> prices;

	/**
	 * The default value of the '{@link #getKerf() <em>Kerf</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getKerf()
	 * @generated
	 * @ordered
	 */
	protected static final Length KERF_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getKerf() <em>Kerf</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getKerf()
	 * @generated
	 * @ordered
	 */
	protected Length kerf = KERF_EDEFAULT;

	/**
	 * The default value of the '{@link #getEndTrim() <em>End Trim</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getEndTrim()
	 * @generated
	 * @ordered
	 */
	protected static final Length END_TRIM_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getEndTrim() <em>End Trim</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getEndTrim()
	 * @generated
	 * @ordered
	 */
	protected Length endTrim = END_TRIM_EDEFAULT;

	/**
	 * The default value of the '{@link #getShortestOffcut() <em>Shortest Offcut</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getShortestOffcut()
	 * @generated
	 * @ordered
	 */
	protected static final Length SHORTEST_OFFCUT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getShortestOffcut() <em>Shortest Offcut</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getShortestOffcut()
	 * @generated
	 * @ordered
	 */
	protected Length shortestOffcut = SHORTEST_OFFCUT_EDEFAULT;

	/**
	 * The cached value of the '{@link #getOffcuts() <em>Offcuts</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOffcuts()
	 * @generated
	 * @ordered
	 */
	protected EList<StoredOffcut> offcuts;

	/**
	 * The cached value of the '{@link #getCutBars() <em>Cut Bars</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCutBars()
	 * @generated
	 * @ordered
	 */
	protected EList<CutBar> cutBars;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected HomeImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return WainscribePackage.Literals.HOME;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int getFormatVersion() {
		return formatVersion;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFormatVersion(int newFormatVersion) {
		int oldFormatVersion = formatVersion;
		formatVersion = newFormatVersion;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.HOME__FORMAT_VERSION, oldFormatVersion, formatVersion));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LengthUnit getUnits() {
		return units;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setUnits(LengthUnit newUnits) {
		LengthUnit oldUnits = units;
		units = newUnits;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.HOME__UNITS, oldUnits, units));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getCountry() {
		return country;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCountry(String newCountry) {
		String oldCountry = country;
		country = newCountry;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.HOME__COUNTRY, oldCountry, country));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Integer getBuilt() {
		return built;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBuilt(Integer newBuilt) {
		Integer oldBuilt = built;
		built = newBuilt;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.HOME__BUILT, oldBuilt, built));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getCurrency() {
		return currency;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCurrency(String newCurrency) {
		String oldCurrency = currency;
		currency = newCurrency;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.HOME__CURRENCY, oldCurrency, currency));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Measure getTax() {
		return tax;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTax(Measure newTax) {
		Measure oldTax = tax;
		tax = newTax;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.HOME__TAX, oldTax, tax));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<String> getRoomOrder() {
		if (roomOrder == null) {
			roomOrder = new EDataTypeUniqueEList<String>(String.class, this, WainscribePackage.HOME__ROOM_ORDER);
		}
		return roomOrder;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Brief getBrief() {
		return brief;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetBrief(Brief newBrief, NotificationChain msgs) {
		Brief oldBrief = brief;
		brief = newBrief;
		if (eNotificationRequired()) {
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, WainscribePackage.HOME__BRIEF, oldBrief, newBrief);
			if (msgs == null) msgs = notification; else msgs.add(notification);
		}
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBrief(Brief newBrief) {
		if (newBrief != brief) {
			NotificationChain msgs = null;
			if (brief != null)
				msgs = ((InternalEObject)brief).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - WainscribePackage.HOME__BRIEF, null, msgs);
			if (newBrief != null)
				msgs = ((InternalEObject)newBrief).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - WainscribePackage.HOME__BRIEF, null, msgs);
			msgs = basicSetBrief(newBrief, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.HOME__BRIEF, newBrief, newBrief));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Paint> getPaints() {
		if (paints == null) {
			paints = new EObjectContainmentEList<Paint>(Paint.class, this, WainscribePackage.HOME__PAINTS);
		}
		return paints;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Price> getPrices() {
		if (prices == null) {
			prices = new EObjectContainmentEList<Price>(Price.class, this, WainscribePackage.HOME__PRICES);
		}
		return prices;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getKerf() {
		return kerf;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setKerf(Length newKerf) {
		Length oldKerf = kerf;
		kerf = newKerf;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.HOME__KERF, oldKerf, kerf));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getEndTrim() {
		return endTrim;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setEndTrim(Length newEndTrim) {
		Length oldEndTrim = endTrim;
		endTrim = newEndTrim;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.HOME__END_TRIM, oldEndTrim, endTrim));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getShortestOffcut() {
		return shortestOffcut;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setShortestOffcut(Length newShortestOffcut) {
		Length oldShortestOffcut = shortestOffcut;
		shortestOffcut = newShortestOffcut;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.HOME__SHORTEST_OFFCUT, oldShortestOffcut, shortestOffcut));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<StoredOffcut> getOffcuts() {
		if (offcuts == null) {
			offcuts = new EObjectContainmentEList<StoredOffcut>(StoredOffcut.class, this, WainscribePackage.HOME__OFFCUTS);
		}
		return offcuts;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<CutBar> getCutBars() {
		if (cutBars == null) {
			cutBars = new EObjectContainmentEList<CutBar>(CutBar.class, this, WainscribePackage.HOME__CUT_BARS);
		}
		return cutBars;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case WainscribePackage.HOME__BRIEF:
				return basicSetBrief(null, msgs);
			case WainscribePackage.HOME__PAINTS:
				return ((InternalEList<?>)getPaints()).basicRemove(otherEnd, msgs);
			case WainscribePackage.HOME__PRICES:
				return ((InternalEList<?>)getPrices()).basicRemove(otherEnd, msgs);
			case WainscribePackage.HOME__OFFCUTS:
				return ((InternalEList<?>)getOffcuts()).basicRemove(otherEnd, msgs);
			case WainscribePackage.HOME__CUT_BARS:
				return ((InternalEList<?>)getCutBars()).basicRemove(otherEnd, msgs);
		}
		return super.eInverseRemove(otherEnd, featureID, msgs);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case WainscribePackage.HOME__FORMAT_VERSION:
				return getFormatVersion();
			case WainscribePackage.HOME__UNITS:
				return getUnits();
			case WainscribePackage.HOME__COUNTRY:
				return getCountry();
			case WainscribePackage.HOME__BUILT:
				return getBuilt();
			case WainscribePackage.HOME__CURRENCY:
				return getCurrency();
			case WainscribePackage.HOME__TAX:
				return getTax();
			case WainscribePackage.HOME__ROOM_ORDER:
				return getRoomOrder();
			case WainscribePackage.HOME__BRIEF:
				return getBrief();
			case WainscribePackage.HOME__PAINTS:
				return getPaints();
			case WainscribePackage.HOME__PRICES:
				return getPrices();
			case WainscribePackage.HOME__KERF:
				return getKerf();
			case WainscribePackage.HOME__END_TRIM:
				return getEndTrim();
			case WainscribePackage.HOME__SHORTEST_OFFCUT:
				return getShortestOffcut();
			case WainscribePackage.HOME__OFFCUTS:
				return getOffcuts();
			case WainscribePackage.HOME__CUT_BARS:
				return getCutBars();
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
			case WainscribePackage.HOME__FORMAT_VERSION:
				setFormatVersion((Integer)newValue);
				return;
			case WainscribePackage.HOME__UNITS:
				setUnits((LengthUnit)newValue);
				return;
			case WainscribePackage.HOME__COUNTRY:
				setCountry((String)newValue);
				return;
			case WainscribePackage.HOME__BUILT:
				setBuilt((Integer)newValue);
				return;
			case WainscribePackage.HOME__CURRENCY:
				setCurrency((String)newValue);
				return;
			case WainscribePackage.HOME__TAX:
				setTax((Measure)newValue);
				return;
			case WainscribePackage.HOME__ROOM_ORDER:
				getRoomOrder().clear();
				getRoomOrder().addAll((Collection<? extends String>)newValue);
				return;
			case WainscribePackage.HOME__BRIEF:
				setBrief((Brief)newValue);
				return;
			case WainscribePackage.HOME__PAINTS:
				getPaints().clear();
				getPaints().addAll((Collection<? extends Paint>)newValue);
				return;
			case WainscribePackage.HOME__PRICES:
				getPrices().clear();
				getPrices().addAll((Collection<? extends Price>)newValue);
				return;
			case WainscribePackage.HOME__KERF:
				setKerf((Length)newValue);
				return;
			case WainscribePackage.HOME__END_TRIM:
				setEndTrim((Length)newValue);
				return;
			case WainscribePackage.HOME__SHORTEST_OFFCUT:
				setShortestOffcut((Length)newValue);
				return;
			case WainscribePackage.HOME__OFFCUTS:
				getOffcuts().clear();
				getOffcuts().addAll((Collection<? extends StoredOffcut>)newValue);
				return;
			case WainscribePackage.HOME__CUT_BARS:
				getCutBars().clear();
				getCutBars().addAll((Collection<? extends CutBar>)newValue);
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
			case WainscribePackage.HOME__FORMAT_VERSION:
				setFormatVersion(FORMAT_VERSION_EDEFAULT);
				return;
			case WainscribePackage.HOME__UNITS:
				setUnits(UNITS_EDEFAULT);
				return;
			case WainscribePackage.HOME__COUNTRY:
				setCountry(COUNTRY_EDEFAULT);
				return;
			case WainscribePackage.HOME__BUILT:
				setBuilt(BUILT_EDEFAULT);
				return;
			case WainscribePackage.HOME__CURRENCY:
				setCurrency(CURRENCY_EDEFAULT);
				return;
			case WainscribePackage.HOME__TAX:
				setTax(TAX_EDEFAULT);
				return;
			case WainscribePackage.HOME__ROOM_ORDER:
				getRoomOrder().clear();
				return;
			case WainscribePackage.HOME__BRIEF:
				setBrief((Brief)null);
				return;
			case WainscribePackage.HOME__PAINTS:
				getPaints().clear();
				return;
			case WainscribePackage.HOME__PRICES:
				getPrices().clear();
				return;
			case WainscribePackage.HOME__KERF:
				setKerf(KERF_EDEFAULT);
				return;
			case WainscribePackage.HOME__END_TRIM:
				setEndTrim(END_TRIM_EDEFAULT);
				return;
			case WainscribePackage.HOME__SHORTEST_OFFCUT:
				setShortestOffcut(SHORTEST_OFFCUT_EDEFAULT);
				return;
			case WainscribePackage.HOME__OFFCUTS:
				getOffcuts().clear();
				return;
			case WainscribePackage.HOME__CUT_BARS:
				getCutBars().clear();
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
			case WainscribePackage.HOME__FORMAT_VERSION:
				return formatVersion != FORMAT_VERSION_EDEFAULT;
			case WainscribePackage.HOME__UNITS:
				return UNITS_EDEFAULT == null ? units != null : !UNITS_EDEFAULT.equals(units);
			case WainscribePackage.HOME__COUNTRY:
				return COUNTRY_EDEFAULT == null ? country != null : !COUNTRY_EDEFAULT.equals(country);
			case WainscribePackage.HOME__BUILT:
				return BUILT_EDEFAULT == null ? built != null : !BUILT_EDEFAULT.equals(built);
			case WainscribePackage.HOME__CURRENCY:
				return CURRENCY_EDEFAULT == null ? currency != null : !CURRENCY_EDEFAULT.equals(currency);
			case WainscribePackage.HOME__TAX:
				return TAX_EDEFAULT == null ? tax != null : !TAX_EDEFAULT.equals(tax);
			case WainscribePackage.HOME__ROOM_ORDER:
				return roomOrder != null && !roomOrder.isEmpty();
			case WainscribePackage.HOME__BRIEF:
				return brief != null;
			case WainscribePackage.HOME__PAINTS:
				return paints != null && !paints.isEmpty();
			case WainscribePackage.HOME__PRICES:
				return prices != null && !prices.isEmpty();
			case WainscribePackage.HOME__KERF:
				return KERF_EDEFAULT == null ? kerf != null : !KERF_EDEFAULT.equals(kerf);
			case WainscribePackage.HOME__END_TRIM:
				return END_TRIM_EDEFAULT == null ? endTrim != null : !END_TRIM_EDEFAULT.equals(endTrim);
			case WainscribePackage.HOME__SHORTEST_OFFCUT:
				return SHORTEST_OFFCUT_EDEFAULT == null ? shortestOffcut != null : !SHORTEST_OFFCUT_EDEFAULT.equals(shortestOffcut);
			case WainscribePackage.HOME__OFFCUTS:
				return offcuts != null && !offcuts.isEmpty();
			case WainscribePackage.HOME__CUT_BARS:
				return cutBars != null && !cutBars.isEmpty();
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
		result.append(" (formatVersion: ");
		result.append(formatVersion);
		result.append(", units: ");
		result.append(units);
		result.append(", country: ");
		result.append(country);
		result.append(", built: ");
		result.append(built);
		result.append(", currency: ");
		result.append(currency);
		result.append(", tax: ");
		result.append(tax);
		result.append(", roomOrder: ");
		result.append(roomOrder);
		result.append(", kerf: ");
		result.append(kerf);
		result.append(", endTrim: ");
		result.append(endTrim);
		result.append(", shortestOffcut: ");
		result.append(shortestOffcut);
		result.append(')');
		return result.toString();
	}

} //HomeImpl
