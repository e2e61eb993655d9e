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

import org.eclipse.emf.ecore.util.EObjectContainmentEList;
import org.eclipse.emf.ecore.util.EObjectContainmentWithInverseEList;
import org.eclipse.emf.ecore.util.InternalEList;

import wainscribe.model.Brief;
import wainscribe.model.Diagonal;
import wainscribe.model.FanMode;
import wainscribe.model.FanOutlet;
import wainscribe.model.Finish;
import wainscribe.model.Guide;
import wainscribe.model.Paint;
import wainscribe.model.Room;
import wainscribe.model.RoomUse;
import wainscribe.model.WainscribePackage;
import wainscribe.model.Wall;

import wainscribe.model.length.Length;

import wainscribe.model.measure.Measure;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Room</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link wainscribe.model.impl.RoomImpl#getFormatVersion <em>Format Version</em>}</li>
 *   <li>{@link wainscribe.model.impl.RoomImpl#getUse <em>Use</em>}</li>
 *   <li>{@link wainscribe.model.impl.RoomImpl#getHeight <em>Height</em>}</li>
 *   <li>{@link wainscribe.model.impl.RoomImpl#getAir <em>Air</em>}</li>
 *   <li>{@link wainscribe.model.impl.RoomImpl#getHumidity <em>Humidity</em>}</li>
 *   <li>{@link wainscribe.model.impl.RoomImpl#getSurfaceTemperature <em>Surface Temperature</em>}</li>
 *   <li>{@link wainscribe.model.impl.RoomImpl#getFan <em>Fan</em>}</li>
 *   <li>{@link wainscribe.model.impl.RoomImpl#getFanOutlet <em>Fan Outlet</em>}</li>
 *   <li>{@link wainscribe.model.impl.RoomImpl#getFanMode <em>Fan Mode</em>}</li>
 *   <li>{@link wainscribe.model.impl.RoomImpl#getOpen <em>Open</em>}</li>
 *   <li>{@link wainscribe.model.impl.RoomImpl#getWalls <em>Walls</em>}</li>
 *   <li>{@link wainscribe.model.impl.RoomImpl#getDiagonals <em>Diagonals</em>}</li>
 *   <li>{@link wainscribe.model.impl.RoomImpl#getFinishes <em>Finishes</em>}</li>
 *   <li>{@link wainscribe.model.impl.RoomImpl#getBrief <em>Brief</em>}</li>
 *   <li>{@link wainscribe.model.impl.RoomImpl#getPaints <em>Paints</em>}</li>
 *   <li>{@link wainscribe.model.impl.RoomImpl#getGuides <em>Guides</em>}</li>
 * </ul>
 *
 * @generated
 */
public class RoomImpl extends ElementImpl implements Room {
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
	 * The default value of the '{@link #getUse() <em>Use</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getUse()
	 * @generated
	 * @ordered
	 */
	protected static final RoomUse USE_EDEFAULT = RoomUse.UNRECORDED;

	/**
	 * The cached value of the '{@link #getUse() <em>Use</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getUse()
	 * @generated
	 * @ordered
	 */
	protected RoomUse use = USE_EDEFAULT;

	/**
	 * The default value of the '{@link #getHeight() <em>Height</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHeight()
	 * @generated
	 * @ordered
	 */
	protected static final Length HEIGHT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getHeight() <em>Height</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHeight()
	 * @generated
	 * @ordered
	 */
	protected Length height = HEIGHT_EDEFAULT;

	/**
	 * The default value of the '{@link #getAir() <em>Air</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAir()
	 * @generated
	 * @ordered
	 */
	protected static final Measure AIR_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getAir() <em>Air</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAir()
	 * @generated
	 * @ordered
	 */
	protected Measure air = AIR_EDEFAULT;

	/**
	 * The default value of the '{@link #getHumidity() <em>Humidity</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHumidity()
	 * @generated
	 * @ordered
	 */
	protected static final Measure HUMIDITY_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getHumidity() <em>Humidity</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHumidity()
	 * @generated
	 * @ordered
	 */
	protected Measure humidity = HUMIDITY_EDEFAULT;

	/**
	 * The default value of the '{@link #getSurfaceTemperature() <em>Surface Temperature</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSurfaceTemperature()
	 * @generated
	 * @ordered
	 */
	protected static final Measure SURFACE_TEMPERATURE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSurfaceTemperature() <em>Surface Temperature</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSurfaceTemperature()
	 * @generated
	 * @ordered
	 */
	protected Measure surfaceTemperature = SURFACE_TEMPERATURE_EDEFAULT;

	/**
	 * The default value of the '{@link #getFan() <em>Fan</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFan()
	 * @generated
	 * @ordered
	 */
	protected static final Measure FAN_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getFan() <em>Fan</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFan()
	 * @generated
	 * @ordered
	 */
	protected Measure fan = FAN_EDEFAULT;

	/**
	 * The default value of the '{@link #getFanOutlet() <em>Fan Outlet</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFanOutlet()
	 * @generated
	 * @ordered
	 */
	protected static final FanOutlet FAN_OUTLET_EDEFAULT = FanOutlet.UNRECORDED;

	/**
	 * The cached value of the '{@link #getFanOutlet() <em>Fan Outlet</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFanOutlet()
	 * @generated
	 * @ordered
	 */
	protected FanOutlet fanOutlet = FAN_OUTLET_EDEFAULT;

	/**
	 * The default value of the '{@link #getFanMode() <em>Fan Mode</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFanMode()
	 * @generated
	 * @ordered
	 */
	protected static final FanMode FAN_MODE_EDEFAULT = FanMode.UNRECORDED;

	/**
	 * The cached value of the '{@link #getFanMode() <em>Fan Mode</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFanMode()
	 * @generated
	 * @ordered
	 */
	protected FanMode fanMode = FAN_MODE_EDEFAULT;

	/**
	 * The default value of the '{@link #getOpen() <em>Open</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOpen()
	 * @generated
	 * @ordered
	 */
	protected static final Boolean OPEN_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getOpen() <em>Open</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOpen()
	 * @generated
	 * @ordered
	 */
	protected Boolean open = OPEN_EDEFAULT;

	/**
	 * The cached value of the '{@link #getWalls() <em>Walls</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWalls()
	 * @generated
	 * @ordered
	 */
	protected EList<Wall> walls;

	/**
	 * The cached value of the '{@link #getDiagonals() <em>Diagonals</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDiagonals()
	 * @generated
	 * @ordered
	 */
	protected EList<Diagonal> diagonals;

	/**
	 * The cached value of the '{@link #getFinishes() <em>Finishes</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFinishes()
	 * @generated
	 * @ordered
	 */
	protected EList<Finish> finishes;

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
	 * The cached value of the '{@link #getGuides() <em>Guides</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGuides()
	 * @generated
	 * @ordered
	 */
	protected EList<Guide> guides;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected RoomImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return WainscribePackage.Literals.ROOM;
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
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.ROOM__FORMAT_VERSION, oldFormatVersion, formatVersion));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public RoomUse getUse() {
		return use;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setUse(RoomUse newUse) {
		RoomUse oldUse = use;
		use = newUse == null ? USE_EDEFAULT : newUse;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.ROOM__USE, oldUse, use));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getHeight() {
		return height;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setHeight(Length newHeight) {
		Length oldHeight = height;
		height = newHeight;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.ROOM__HEIGHT, oldHeight, height));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Measure getAir() {
		return air;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAir(Measure newAir) {
		Measure oldAir = air;
		air = newAir;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.ROOM__AIR, oldAir, air));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Measure getHumidity() {
		return humidity;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setHumidity(Measure newHumidity) {
		Measure oldHumidity = humidity;
		humidity = newHumidity;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.ROOM__HUMIDITY, oldHumidity, humidity));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Measure getSurfaceTemperature() {
		return surfaceTemperature;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSurfaceTemperature(Measure newSurfaceTemperature) {
		Measure oldSurfaceTemperature = surfaceTemperature;
		surfaceTemperature = newSurfaceTemperature;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.ROOM__SURFACE_TEMPERATURE, oldSurfaceTemperature, surfaceTemperature));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Measure getFan() {
		return fan;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFan(Measure newFan) {
		Measure oldFan = fan;
		fan = newFan;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.ROOM__FAN, oldFan, fan));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public FanOutlet getFanOutlet() {
		return fanOutlet;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFanOutlet(FanOutlet newFanOutlet) {
		FanOutlet oldFanOutlet = fanOutlet;
		fanOutlet = newFanOutlet == null ? FAN_OUTLET_EDEFAULT : newFanOutlet;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.ROOM__FAN_OUTLET, oldFanOutlet, fanOutlet));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public FanMode getFanMode() {
		return fanMode;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFanMode(FanMode newFanMode) {
		FanMode oldFanMode = fanMode;
		fanMode = newFanMode == null ? FAN_MODE_EDEFAULT : newFanMode;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.ROOM__FAN_MODE, oldFanMode, fanMode));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Boolean getOpen() {
		return open;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setOpen(Boolean newOpen) {
		Boolean oldOpen = open;
		open = newOpen;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.ROOM__OPEN, oldOpen, open));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Wall> getWalls() {
		if (walls == null) {
			walls = new EObjectContainmentWithInverseEList<Wall>(Wall.class, this, WainscribePackage.ROOM__WALLS, WainscribePackage.WALL__ROOM);
		}
		return walls;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Diagonal> getDiagonals() {
		if (diagonals == null) {
			diagonals = new EObjectContainmentEList<Diagonal>(Diagonal.class, this, WainscribePackage.ROOM__DIAGONALS);
		}
		return diagonals;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Finish> getFinishes() {
		if (finishes == null) {
			finishes = new EObjectContainmentEList<Finish>(Finish.class, this, WainscribePackage.ROOM__FINISHES);
		}
		return finishes;
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
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, WainscribePackage.ROOM__BRIEF, oldBrief, newBrief);
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
				msgs = ((InternalEObject)brief).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - WainscribePackage.ROOM__BRIEF, null, msgs);
			if (newBrief != null)
				msgs = ((InternalEObject)newBrief).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - WainscribePackage.ROOM__BRIEF, null, msgs);
			msgs = basicSetBrief(newBrief, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.ROOM__BRIEF, newBrief, newBrief));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Paint> getPaints() {
		if (paints == null) {
			paints = new EObjectContainmentEList<Paint>(Paint.class, this, WainscribePackage.ROOM__PAINTS);
		}
		return paints;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Guide> getGuides() {
		if (guides == null) {
			guides = new EObjectContainmentEList<Guide>(Guide.class, this, WainscribePackage.ROOM__GUIDES);
		}
		return guides;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public NotificationChain eInverseAdd(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case WainscribePackage.ROOM__WALLS:
				return ((InternalEList<InternalEObject>)(InternalEList<?>)getWalls()).basicAdd(otherEnd, msgs);
		}
		return super.eInverseAdd(otherEnd, featureID, msgs);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case WainscribePackage.ROOM__WALLS:
				return ((InternalEList<?>)getWalls()).basicRemove(otherEnd, msgs);
			case WainscribePackage.ROOM__DIAGONALS:
				return ((InternalEList<?>)getDiagonals()).basicRemove(otherEnd, msgs);
			case WainscribePackage.ROOM__FINISHES:
				return ((InternalEList<?>)getFinishes()).basicRemove(otherEnd, msgs);
			case WainscribePackage.ROOM__BRIEF:
				return basicSetBrief(null, msgs);
			case WainscribePackage.ROOM__PAINTS:
				return ((InternalEList<?>)getPaints()).basicRemove(otherEnd, msgs);
			case WainscribePackage.ROOM__GUIDES:
				return ((InternalEList<?>)getGuides()).basicRemove(otherEnd, msgs);
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
			case WainscribePackage.ROOM__FORMAT_VERSION:
				return getFormatVersion();
			case WainscribePackage.ROOM__USE:
				return getUse();
			case WainscribePackage.ROOM__HEIGHT:
				return getHeight();
			case WainscribePackage.ROOM__AIR:
				return getAir();
			case WainscribePackage.ROOM__HUMIDITY:
				return getHumidity();
			case WainscribePackage.ROOM__SURFACE_TEMPERATURE:
				return getSurfaceTemperature();
			case WainscribePackage.ROOM__FAN:
				return getFan();
			case WainscribePackage.ROOM__FAN_OUTLET:
				return getFanOutlet();
			case WainscribePackage.ROOM__FAN_MODE:
				return getFanMode();
			case WainscribePackage.ROOM__OPEN:
				return getOpen();
			case WainscribePackage.ROOM__WALLS:
				return getWalls();
			case WainscribePackage.ROOM__DIAGONALS:
				return getDiagonals();
			case WainscribePackage.ROOM__FINISHES:
				return getFinishes();
			case WainscribePackage.ROOM__BRIEF:
				return getBrief();
			case WainscribePackage.ROOM__PAINTS:
				return getPaints();
			case WainscribePackage.ROOM__GUIDES:
				return getGuides();
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
			case WainscribePackage.ROOM__FORMAT_VERSION:
				setFormatVersion((Integer)newValue);
				return;
			case WainscribePackage.ROOM__USE:
				setUse((RoomUse)newValue);
				return;
			case WainscribePackage.ROOM__HEIGHT:
				setHeight((Length)newValue);
				return;
			case WainscribePackage.ROOM__AIR:
				setAir((Measure)newValue);
				return;
			case WainscribePackage.ROOM__HUMIDITY:
				setHumidity((Measure)newValue);
				return;
			case WainscribePackage.ROOM__SURFACE_TEMPERATURE:
				setSurfaceTemperature((Measure)newValue);
				return;
			case WainscribePackage.ROOM__FAN:
				setFan((Measure)newValue);
				return;
			case WainscribePackage.ROOM__FAN_OUTLET:
				setFanOutlet((FanOutlet)newValue);
				return;
			case WainscribePackage.ROOM__FAN_MODE:
				setFanMode((FanMode)newValue);
				return;
			case WainscribePackage.ROOM__OPEN:
				setOpen((Boolean)newValue);
				return;
			case WainscribePackage.ROOM__WALLS:
				getWalls().clear();
				getWalls().addAll((Collection<? extends Wall>)newValue);
				return;
			case WainscribePackage.ROOM__DIAGONALS:
				getDiagonals().clear();
				getDiagonals().addAll((Collection<? extends Diagonal>)newValue);
				return;
			case WainscribePackage.ROOM__FINISHES:
				getFinishes().clear();
				getFinishes().addAll((Collection<? extends Finish>)newValue);
				return;
			case WainscribePackage.ROOM__BRIEF:
				setBrief((Brief)newValue);
				return;
			case WainscribePackage.ROOM__PAINTS:
				getPaints().clear();
				getPaints().addAll((Collection<? extends Paint>)newValue);
				return;
			case WainscribePackage.ROOM__GUIDES:
				getGuides().clear();
				getGuides().addAll((Collection<? extends Guide>)newValue);
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
			case WainscribePackage.ROOM__FORMAT_VERSION:
				setFormatVersion(FORMAT_VERSION_EDEFAULT);
				return;
			case WainscribePackage.ROOM__USE:
				setUse(USE_EDEFAULT);
				return;
			case WainscribePackage.ROOM__HEIGHT:
				setHeight(HEIGHT_EDEFAULT);
				return;
			case WainscribePackage.ROOM__AIR:
				setAir(AIR_EDEFAULT);
				return;
			case WainscribePackage.ROOM__HUMIDITY:
				setHumidity(HUMIDITY_EDEFAULT);
				return;
			case WainscribePackage.ROOM__SURFACE_TEMPERATURE:
				setSurfaceTemperature(SURFACE_TEMPERATURE_EDEFAULT);
				return;
			case WainscribePackage.ROOM__FAN:
				setFan(FAN_EDEFAULT);
				return;
			case WainscribePackage.ROOM__FAN_OUTLET:
				setFanOutlet(FAN_OUTLET_EDEFAULT);
				return;
			case WainscribePackage.ROOM__FAN_MODE:
				setFanMode(FAN_MODE_EDEFAULT);
				return;
			case WainscribePackage.ROOM__OPEN:
				setOpen(OPEN_EDEFAULT);
				return;
			case WainscribePackage.ROOM__WALLS:
				getWalls().clear();
				return;
			case WainscribePackage.ROOM__DIAGONALS:
				getDiagonals().clear();
				return;
			case WainscribePackage.ROOM__FINISHES:
				getFinishes().clear();
				return;
			case WainscribePackage.ROOM__BRIEF:
				setBrief((Brief)null);
				return;
			case WainscribePackage.ROOM__PAINTS:
				getPaints().clear();
				return;
			case WainscribePackage.ROOM__GUIDES:
				getGuides().clear();
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
			case WainscribePackage.ROOM__FORMAT_VERSION:
				return formatVersion != FORMAT_VERSION_EDEFAULT;
			case WainscribePackage.ROOM__USE:
				return use != USE_EDEFAULT;
			case WainscribePackage.ROOM__HEIGHT:
				return HEIGHT_EDEFAULT == null ? height != null : !HEIGHT_EDEFAULT.equals(height);
			case WainscribePackage.ROOM__AIR:
				return AIR_EDEFAULT == null ? air != null : !AIR_EDEFAULT.equals(air);
			case WainscribePackage.ROOM__HUMIDITY:
				return HUMIDITY_EDEFAULT == null ? humidity != null : !HUMIDITY_EDEFAULT.equals(humidity);
			case WainscribePackage.ROOM__SURFACE_TEMPERATURE:
				return SURFACE_TEMPERATURE_EDEFAULT == null ? surfaceTemperature != null : !SURFACE_TEMPERATURE_EDEFAULT.equals(surfaceTemperature);
			case WainscribePackage.ROOM__FAN:
				return FAN_EDEFAULT == null ? fan != null : !FAN_EDEFAULT.equals(fan);
			case WainscribePackage.ROOM__FAN_OUTLET:
				return fanOutlet != FAN_OUTLET_EDEFAULT;
			case WainscribePackage.ROOM__FAN_MODE:
				return fanMode != FAN_MODE_EDEFAULT;
			case WainscribePackage.ROOM__OPEN:
				return OPEN_EDEFAULT == null ? open != null : !OPEN_EDEFAULT.equals(open);
			case WainscribePackage.ROOM__WALLS:
				return walls != null && !walls.isEmpty();
			case WainscribePackage.ROOM__DIAGONALS:
				return diagonals != null && !diagonals.isEmpty();
			case WainscribePackage.ROOM__FINISHES:
				return finishes != null && !finishes.isEmpty();
			case WainscribePackage.ROOM__BRIEF:
				return brief != null;
			case WainscribePackage.ROOM__PAINTS:
				return paints != null && !paints.isEmpty();
			case WainscribePackage.ROOM__GUIDES:
				return guides != null && !guides.isEmpty();
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
		result.append(", use: ");
		result.append(use);
		result.append(", height: ");
		result.append(height);
		result.append(", air: ");
		result.append(air);
		result.append(", humidity: ");
		result.append(humidity);
		result.append(", surfaceTemperature: ");
		result.append(surfaceTemperature);
		result.append(", fan: ");
		result.append(fan);
		result.append(", fanOutlet: ");
		result.append(fanOutlet);
		result.append(", fanMode: ");
		result.append(fanMode);
		result.append(", open: ");
		result.append(open);
		result.append(')');
		return result.toString();
	}

} //RoomImpl
