/**
 * SPDX-License-Identifier: EPL-2.0
 */
package wainscribe.model.impl;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import wainscribe.model.Fixing;
import wainscribe.model.Fixture;
import wainscribe.model.FixtureType;
import wainscribe.model.HeatSource;
import wainscribe.model.Support;
import wainscribe.model.WainscribePackage;

import wainscribe.model.length.Length;

import wainscribe.model.measure.Measure;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Fixture</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link wainscribe.model.impl.FixtureImpl#getType <em>Type</em>}</li>
 *   <li>{@link wainscribe.model.impl.FixtureImpl#getHeat <em>Heat</em>}</li>
 *   <li>{@link wainscribe.model.impl.FixtureImpl#getTankGap <em>Tank Gap</em>}</li>
 *   <li>{@link wainscribe.model.impl.FixtureImpl#getTankTop <em>Tank Top</em>}</li>
 *   <li>{@link wainscribe.model.impl.FixtureImpl#getWetEdge <em>Wet Edge</em>}</li>
 *   <li>{@link wainscribe.model.impl.FixtureImpl#getBehind <em>Behind</em>}</li>
 *   <li>{@link wainscribe.model.impl.FixtureImpl#getSupport <em>Support</em>}</li>
 *   <li>{@link wainscribe.model.impl.FixtureImpl#getFixing <em>Fixing</em>}</li>
 *   <li>{@link wainscribe.model.impl.FixtureImpl#getMass <em>Mass</em>}</li>
 *   <li>{@link wainscribe.model.impl.FixtureImpl#getLoad <em>Load</em>}</li>
 *   <li>{@link wainscribe.model.impl.FixtureImpl#getGap <em>Gap</em>}</li>
 *   <li>{@link wainscribe.model.impl.FixtureImpl#getOpeningX <em>Opening X</em>}</li>
 *   <li>{@link wainscribe.model.impl.FixtureImpl#getOpeningWidth <em>Opening Width</em>}</li>
 *   <li>{@link wainscribe.model.impl.FixtureImpl#getOpeningHeight <em>Opening Height</em>}</li>
 *   <li>{@link wainscribe.model.impl.FixtureImpl#getPlanned <em>Planned</em>}</li>
 *   <li>{@link wainscribe.model.impl.FixtureImpl#getFramed <em>Framed</em>}</li>
 * </ul>
 *
 * @generated
 */
public class FixtureImpl extends PlacedImpl implements Fixture {
	/**
	 * The default value of the '{@link #getType() <em>Type</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getType()
	 * @generated
	 * @ordered
	 */
	protected static final FixtureType TYPE_EDEFAULT = FixtureType.TOILET;

	/**
	 * The cached value of the '{@link #getType() <em>Type</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getType()
	 * @generated
	 * @ordered
	 */
	protected FixtureType type = TYPE_EDEFAULT;

	/**
	 * The default value of the '{@link #getHeat() <em>Heat</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHeat()
	 * @generated
	 * @ordered
	 */
	protected static final HeatSource HEAT_EDEFAULT = HeatSource.UNRECORDED;

	/**
	 * The cached value of the '{@link #getHeat() <em>Heat</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHeat()
	 * @generated
	 * @ordered
	 */
	protected HeatSource heat = HEAT_EDEFAULT;

	/**
	 * The default value of the '{@link #getTankGap() <em>Tank Gap</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTankGap()
	 * @generated
	 * @ordered
	 */
	protected static final Length TANK_GAP_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getTankGap() <em>Tank Gap</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTankGap()
	 * @generated
	 * @ordered
	 */
	protected Length tankGap = TANK_GAP_EDEFAULT;

	/**
	 * The default value of the '{@link #getTankTop() <em>Tank Top</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTankTop()
	 * @generated
	 * @ordered
	 */
	protected static final Length TANK_TOP_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getTankTop() <em>Tank Top</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTankTop()
	 * @generated
	 * @ordered
	 */
	protected Length tankTop = TANK_TOP_EDEFAULT;

	/**
	 * The default value of the '{@link #getWetEdge() <em>Wet Edge</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWetEdge()
	 * @generated
	 * @ordered
	 */
	protected static final Length WET_EDGE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getWetEdge() <em>Wet Edge</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWetEdge()
	 * @generated
	 * @ordered
	 */
	protected Length wetEdge = WET_EDGE_EDEFAULT;

	/**
	 * The default value of the '{@link #getBehind() <em>Behind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBehind()
	 * @generated
	 * @ordered
	 */
	protected static final Boolean BEHIND_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getBehind() <em>Behind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBehind()
	 * @generated
	 * @ordered
	 */
	protected Boolean behind = BEHIND_EDEFAULT;

	/**
	 * The default value of the '{@link #getSupport() <em>Support</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSupport()
	 * @generated
	 * @ordered
	 */
	protected static final Support SUPPORT_EDEFAULT = Support.UNRECORDED;

	/**
	 * The cached value of the '{@link #getSupport() <em>Support</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSupport()
	 * @generated
	 * @ordered
	 */
	protected Support support = SUPPORT_EDEFAULT;

	/**
	 * The default value of the '{@link #getFixing() <em>Fixing</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFixing()
	 * @generated
	 * @ordered
	 */
	protected static final Fixing FIXING_EDEFAULT = Fixing.UNRECORDED;

	/**
	 * The cached value of the '{@link #getFixing() <em>Fixing</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFixing()
	 * @generated
	 * @ordered
	 */
	protected Fixing fixing = FIXING_EDEFAULT;

	/**
	 * The default value of the '{@link #getMass() <em>Mass</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMass()
	 * @generated
	 * @ordered
	 */
	protected static final Measure MASS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMass() <em>Mass</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMass()
	 * @generated
	 * @ordered
	 */
	protected Measure mass = MASS_EDEFAULT;

	/**
	 * The default value of the '{@link #getLoad() <em>Load</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLoad()
	 * @generated
	 * @ordered
	 */
	protected static final Measure LOAD_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getLoad() <em>Load</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLoad()
	 * @generated
	 * @ordered
	 */
	protected Measure load = LOAD_EDEFAULT;

	/**
	 * The default value of the '{@link #getGap() <em>Gap</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGap()
	 * @generated
	 * @ordered
	 */
	protected static final Length GAP_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getGap() <em>Gap</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGap()
	 * @generated
	 * @ordered
	 */
	protected Length gap = GAP_EDEFAULT;

	/**
	 * The default value of the '{@link #getOpeningX() <em>Opening X</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOpeningX()
	 * @generated
	 * @ordered
	 */
	protected static final Length OPENING_X_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getOpeningX() <em>Opening X</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOpeningX()
	 * @generated
	 * @ordered
	 */
	protected Length openingX = OPENING_X_EDEFAULT;

	/**
	 * The default value of the '{@link #getOpeningWidth() <em>Opening Width</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOpeningWidth()
	 * @generated
	 * @ordered
	 */
	protected static final Length OPENING_WIDTH_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getOpeningWidth() <em>Opening Width</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOpeningWidth()
	 * @generated
	 * @ordered
	 */
	protected Length openingWidth = OPENING_WIDTH_EDEFAULT;

	/**
	 * The default value of the '{@link #getOpeningHeight() <em>Opening Height</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOpeningHeight()
	 * @generated
	 * @ordered
	 */
	protected static final Length OPENING_HEIGHT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getOpeningHeight() <em>Opening Height</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOpeningHeight()
	 * @generated
	 * @ordered
	 */
	protected Length openingHeight = OPENING_HEIGHT_EDEFAULT;

	/**
	 * The default value of the '{@link #getPlanned() <em>Planned</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlanned()
	 * @generated
	 * @ordered
	 */
	protected static final Boolean PLANNED_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPlanned() <em>Planned</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlanned()
	 * @generated
	 * @ordered
	 */
	protected Boolean planned = PLANNED_EDEFAULT;

	/**
	 * The default value of the '{@link #getFramed() <em>Framed</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFramed()
	 * @generated
	 * @ordered
	 */
	protected static final Boolean FRAMED_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getFramed() <em>Framed</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFramed()
	 * @generated
	 * @ordered
	 */
	protected Boolean framed = FRAMED_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected FixtureImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return WainscribePackage.Literals.FIXTURE;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public FixtureType getType() {
		return type;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setType(FixtureType newType) {
		FixtureType oldType = type;
		type = newType == null ? TYPE_EDEFAULT : newType;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.FIXTURE__TYPE, oldType, type));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public HeatSource getHeat() {
		return heat;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setHeat(HeatSource newHeat) {
		HeatSource oldHeat = heat;
		heat = newHeat == null ? HEAT_EDEFAULT : newHeat;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.FIXTURE__HEAT, oldHeat, heat));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getTankGap() {
		return tankGap;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTankGap(Length newTankGap) {
		Length oldTankGap = tankGap;
		tankGap = newTankGap;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.FIXTURE__TANK_GAP, oldTankGap, tankGap));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getTankTop() {
		return tankTop;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTankTop(Length newTankTop) {
		Length oldTankTop = tankTop;
		tankTop = newTankTop;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.FIXTURE__TANK_TOP, oldTankTop, tankTop));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getWetEdge() {
		return wetEdge;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWetEdge(Length newWetEdge) {
		Length oldWetEdge = wetEdge;
		wetEdge = newWetEdge;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.FIXTURE__WET_EDGE, oldWetEdge, wetEdge));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Boolean getBehind() {
		return behind;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBehind(Boolean newBehind) {
		Boolean oldBehind = behind;
		behind = newBehind;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.FIXTURE__BEHIND, oldBehind, behind));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Support getSupport() {
		return support;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSupport(Support newSupport) {
		Support oldSupport = support;
		support = newSupport == null ? SUPPORT_EDEFAULT : newSupport;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.FIXTURE__SUPPORT, oldSupport, support));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Fixing getFixing() {
		return fixing;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFixing(Fixing newFixing) {
		Fixing oldFixing = fixing;
		fixing = newFixing == null ? FIXING_EDEFAULT : newFixing;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.FIXTURE__FIXING, oldFixing, fixing));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Measure getMass() {
		return mass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMass(Measure newMass) {
		Measure oldMass = mass;
		mass = newMass;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.FIXTURE__MASS, oldMass, mass));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Measure getLoad() {
		return load;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLoad(Measure newLoad) {
		Measure oldLoad = load;
		load = newLoad;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.FIXTURE__LOAD, oldLoad, load));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getGap() {
		return gap;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setGap(Length newGap) {
		Length oldGap = gap;
		gap = newGap;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.FIXTURE__GAP, oldGap, gap));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getOpeningX() {
		return openingX;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setOpeningX(Length newOpeningX) {
		Length oldOpeningX = openingX;
		openingX = newOpeningX;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.FIXTURE__OPENING_X, oldOpeningX, openingX));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getOpeningWidth() {
		return openingWidth;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setOpeningWidth(Length newOpeningWidth) {
		Length oldOpeningWidth = openingWidth;
		openingWidth = newOpeningWidth;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.FIXTURE__OPENING_WIDTH, oldOpeningWidth, openingWidth));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getOpeningHeight() {
		return openingHeight;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setOpeningHeight(Length newOpeningHeight) {
		Length oldOpeningHeight = openingHeight;
		openingHeight = newOpeningHeight;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.FIXTURE__OPENING_HEIGHT, oldOpeningHeight, openingHeight));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Boolean getPlanned() {
		return planned;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPlanned(Boolean newPlanned) {
		Boolean oldPlanned = planned;
		planned = newPlanned;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.FIXTURE__PLANNED, oldPlanned, planned));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Boolean getFramed() {
		return framed;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFramed(Boolean newFramed) {
		Boolean oldFramed = framed;
		framed = newFramed;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.FIXTURE__FRAMED, oldFramed, framed));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case WainscribePackage.FIXTURE__TYPE:
				return getType();
			case WainscribePackage.FIXTURE__HEAT:
				return getHeat();
			case WainscribePackage.FIXTURE__TANK_GAP:
				return getTankGap();
			case WainscribePackage.FIXTURE__TANK_TOP:
				return getTankTop();
			case WainscribePackage.FIXTURE__WET_EDGE:
				return getWetEdge();
			case WainscribePackage.FIXTURE__BEHIND:
				return getBehind();
			case WainscribePackage.FIXTURE__SUPPORT:
				return getSupport();
			case WainscribePackage.FIXTURE__FIXING:
				return getFixing();
			case WainscribePackage.FIXTURE__MASS:
				return getMass();
			case WainscribePackage.FIXTURE__LOAD:
				return getLoad();
			case WainscribePackage.FIXTURE__GAP:
				return getGap();
			case WainscribePackage.FIXTURE__OPENING_X:
				return getOpeningX();
			case WainscribePackage.FIXTURE__OPENING_WIDTH:
				return getOpeningWidth();
			case WainscribePackage.FIXTURE__OPENING_HEIGHT:
				return getOpeningHeight();
			case WainscribePackage.FIXTURE__PLANNED:
				return getPlanned();
			case WainscribePackage.FIXTURE__FRAMED:
				return getFramed();
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
			case WainscribePackage.FIXTURE__TYPE:
				setType((FixtureType)newValue);
				return;
			case WainscribePackage.FIXTURE__HEAT:
				setHeat((HeatSource)newValue);
				return;
			case WainscribePackage.FIXTURE__TANK_GAP:
				setTankGap((Length)newValue);
				return;
			case WainscribePackage.FIXTURE__TANK_TOP:
				setTankTop((Length)newValue);
				return;
			case WainscribePackage.FIXTURE__WET_EDGE:
				setWetEdge((Length)newValue);
				return;
			case WainscribePackage.FIXTURE__BEHIND:
				setBehind((Boolean)newValue);
				return;
			case WainscribePackage.FIXTURE__SUPPORT:
				setSupport((Support)newValue);
				return;
			case WainscribePackage.FIXTURE__FIXING:
				setFixing((Fixing)newValue);
				return;
			case WainscribePackage.FIXTURE__MASS:
				setMass((Measure)newValue);
				return;
			case WainscribePackage.FIXTURE__LOAD:
				setLoad((Measure)newValue);
				return;
			case WainscribePackage.FIXTURE__GAP:
				setGap((Length)newValue);
				return;
			case WainscribePackage.FIXTURE__OPENING_X:
				setOpeningX((Length)newValue);
				return;
			case WainscribePackage.FIXTURE__OPENING_WIDTH:
				setOpeningWidth((Length)newValue);
				return;
			case WainscribePackage.FIXTURE__OPENING_HEIGHT:
				setOpeningHeight((Length)newValue);
				return;
			case WainscribePackage.FIXTURE__PLANNED:
				setPlanned((Boolean)newValue);
				return;
			case WainscribePackage.FIXTURE__FRAMED:
				setFramed((Boolean)newValue);
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
			case WainscribePackage.FIXTURE__TYPE:
				setType(TYPE_EDEFAULT);
				return;
			case WainscribePackage.FIXTURE__HEAT:
				setHeat(HEAT_EDEFAULT);
				return;
			case WainscribePackage.FIXTURE__TANK_GAP:
				setTankGap(TANK_GAP_EDEFAULT);
				return;
			case WainscribePackage.FIXTURE__TANK_TOP:
				setTankTop(TANK_TOP_EDEFAULT);
				return;
			case WainscribePackage.FIXTURE__WET_EDGE:
				setWetEdge(WET_EDGE_EDEFAULT);
				return;
			case WainscribePackage.FIXTURE__BEHIND:
				setBehind(BEHIND_EDEFAULT);
				return;
			case WainscribePackage.FIXTURE__SUPPORT:
				setSupport(SUPPORT_EDEFAULT);
				return;
			case WainscribePackage.FIXTURE__FIXING:
				setFixing(FIXING_EDEFAULT);
				return;
			case WainscribePackage.FIXTURE__MASS:
				setMass(MASS_EDEFAULT);
				return;
			case WainscribePackage.FIXTURE__LOAD:
				setLoad(LOAD_EDEFAULT);
				return;
			case WainscribePackage.FIXTURE__GAP:
				setGap(GAP_EDEFAULT);
				return;
			case WainscribePackage.FIXTURE__OPENING_X:
				setOpeningX(OPENING_X_EDEFAULT);
				return;
			case WainscribePackage.FIXTURE__OPENING_WIDTH:
				setOpeningWidth(OPENING_WIDTH_EDEFAULT);
				return;
			case WainscribePackage.FIXTURE__OPENING_HEIGHT:
				setOpeningHeight(OPENING_HEIGHT_EDEFAULT);
				return;
			case WainscribePackage.FIXTURE__PLANNED:
				setPlanned(PLANNED_EDEFAULT);
				return;
			case WainscribePackage.FIXTURE__FRAMED:
				setFramed(FRAMED_EDEFAULT);
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
			case WainscribePackage.FIXTURE__TYPE:
				return type != TYPE_EDEFAULT;
			case WainscribePackage.FIXTURE__HEAT:
				return heat != HEAT_EDEFAULT;
			case WainscribePackage.FIXTURE__TANK_GAP:
				return TANK_GAP_EDEFAULT == null ? tankGap != null : !TANK_GAP_EDEFAULT.equals(tankGap);
			case WainscribePackage.FIXTURE__TANK_TOP:
				return TANK_TOP_EDEFAULT == null ? tankTop != null : !TANK_TOP_EDEFAULT.equals(tankTop);
			case WainscribePackage.FIXTURE__WET_EDGE:
				return WET_EDGE_EDEFAULT == null ? wetEdge != null : !WET_EDGE_EDEFAULT.equals(wetEdge);
			case WainscribePackage.FIXTURE__BEHIND:
				return BEHIND_EDEFAULT == null ? behind != null : !BEHIND_EDEFAULT.equals(behind);
			case WainscribePackage.FIXTURE__SUPPORT:
				return support != SUPPORT_EDEFAULT;
			case WainscribePackage.FIXTURE__FIXING:
				return fixing != FIXING_EDEFAULT;
			case WainscribePackage.FIXTURE__MASS:
				return MASS_EDEFAULT == null ? mass != null : !MASS_EDEFAULT.equals(mass);
			case WainscribePackage.FIXTURE__LOAD:
				return LOAD_EDEFAULT == null ? load != null : !LOAD_EDEFAULT.equals(load);
			case WainscribePackage.FIXTURE__GAP:
				return GAP_EDEFAULT == null ? gap != null : !GAP_EDEFAULT.equals(gap);
			case WainscribePackage.FIXTURE__OPENING_X:
				return OPENING_X_EDEFAULT == null ? openingX != null : !OPENING_X_EDEFAULT.equals(openingX);
			case WainscribePackage.FIXTURE__OPENING_WIDTH:
				return OPENING_WIDTH_EDEFAULT == null ? openingWidth != null : !OPENING_WIDTH_EDEFAULT.equals(openingWidth);
			case WainscribePackage.FIXTURE__OPENING_HEIGHT:
				return OPENING_HEIGHT_EDEFAULT == null ? openingHeight != null : !OPENING_HEIGHT_EDEFAULT.equals(openingHeight);
			case WainscribePackage.FIXTURE__PLANNED:
				return PLANNED_EDEFAULT == null ? planned != null : !PLANNED_EDEFAULT.equals(planned);
			case WainscribePackage.FIXTURE__FRAMED:
				return FRAMED_EDEFAULT == null ? framed != null : !FRAMED_EDEFAULT.equals(framed);
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
		result.append(", heat: ");
		result.append(heat);
		result.append(", tankGap: ");
		result.append(tankGap);
		result.append(", tankTop: ");
		result.append(tankTop);
		result.append(", wetEdge: ");
		result.append(wetEdge);
		result.append(", behind: ");
		result.append(behind);
		result.append(", support: ");
		result.append(support);
		result.append(", fixing: ");
		result.append(fixing);
		result.append(", mass: ");
		result.append(mass);
		result.append(", load: ");
		result.append(load);
		result.append(", gap: ");
		result.append(gap);
		result.append(", openingX: ");
		result.append(openingX);
		result.append(", openingWidth: ");
		result.append(openingWidth);
		result.append(", openingHeight: ");
		result.append(openingHeight);
		result.append(", planned: ");
		result.append(planned);
		result.append(", framed: ");
		result.append(framed);
		result.append(')');
		return result.toString();
	}

} //FixtureImpl
