/**
 * SPDX-License-Identifier: EPL-2.0
 */
package wainscribe.model.impl;

import java.math.BigDecimal;

import java.util.Collection;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.eclipse.emf.ecore.util.EObjectContainmentEList;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.emf.ecore.util.InternalEList;

import wainscribe.model.Axis;
import wainscribe.model.Box;
import wainscribe.model.Corner;
import wainscribe.model.ExistingTrim;
import wainscribe.model.Fixture;
import wainscribe.model.Guide;
import wainscribe.model.Opening;
import wainscribe.model.PlacedFrame;
import wainscribe.model.Room;
import wainscribe.model.Service;
import wainscribe.model.WainscribePackage;
import wainscribe.model.Wall;

import wainscribe.model.length.Length;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Wall</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link wainscribe.model.impl.WallImpl#getRoom <em>Room</em>}</li>
 *   <li>{@link wainscribe.model.impl.WallImpl#getLength <em>Length</em>}</li>
 *   <li>{@link wainscribe.model.impl.WallImpl#getHeight <em>Height</em>}</li>
 *   <li>{@link wainscribe.model.impl.WallImpl#getHeightRight <em>Height Right</em>}</li>
 *   <li>{@link wainscribe.model.impl.WallImpl#getFloorRight <em>Floor Right</em>}</li>
 *   <li>{@link wainscribe.model.impl.WallImpl#getAngle <em>Angle</em>}</li>
 *   <li>{@link wainscribe.model.impl.WallImpl#getBow <em>Bow</em>}</li>
 *   <li>{@link wainscribe.model.impl.WallImpl#getPlumbing <em>Plumbing</em>}</li>
 *   <li>{@link wainscribe.model.impl.WallImpl#getRated <em>Rated</em>}</li>
 *   <li>{@link wainscribe.model.impl.WallImpl#getWallboard <em>Wallboard</em>}</li>
 *   <li>{@link wainscribe.model.impl.WallImpl#getStudSpacing <em>Stud Spacing</em>}</li>
 *   <li>{@link wainscribe.model.impl.WallImpl#getStudSpacingUnknown <em>Stud Spacing Unknown</em>}</li>
 *   <li>{@link wainscribe.model.impl.WallImpl#getCorner <em>Corner</em>}</li>
 *   <li>{@link wainscribe.model.impl.WallImpl#getOpenings <em>Openings</em>}</li>
 *   <li>{@link wainscribe.model.impl.WallImpl#getFixtures <em>Fixtures</em>}</li>
 *   <li>{@link wainscribe.model.impl.WallImpl#getBoxes <em>Boxes</em>}</li>
 *   <li>{@link wainscribe.model.impl.WallImpl#getTrims <em>Trims</em>}</li>
 *   <li>{@link wainscribe.model.impl.WallImpl#getServices <em>Services</em>}</li>
 *   <li>{@link wainscribe.model.impl.WallImpl#getPlacedFrames <em>Placed Frames</em>}</li>
 *   <li>{@link wainscribe.model.impl.WallImpl#getAxes <em>Axes</em>}</li>
 *   <li>{@link wainscribe.model.impl.WallImpl#getGuides <em>Guides</em>}</li>
 * </ul>
 *
 * @generated
 */
public class WallImpl extends ElementImpl implements Wall {
	/**
	 * The default value of the '{@link #getLength() <em>Length</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLength()
	 * @generated
	 * @ordered
	 */
	protected static final Length LENGTH_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getLength() <em>Length</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLength()
	 * @generated
	 * @ordered
	 */
	protected Length length = LENGTH_EDEFAULT;

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
	 * The default value of the '{@link #getHeightRight() <em>Height Right</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHeightRight()
	 * @generated
	 * @ordered
	 */
	protected static final Length HEIGHT_RIGHT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getHeightRight() <em>Height Right</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHeightRight()
	 * @generated
	 * @ordered
	 */
	protected Length heightRight = HEIGHT_RIGHT_EDEFAULT;

	/**
	 * The default value of the '{@link #getFloorRight() <em>Floor Right</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFloorRight()
	 * @generated
	 * @ordered
	 */
	protected static final Length FLOOR_RIGHT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getFloorRight() <em>Floor Right</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFloorRight()
	 * @generated
	 * @ordered
	 */
	protected Length floorRight = FLOOR_RIGHT_EDEFAULT;

	/**
	 * The default value of the '{@link #getAngle() <em>Angle</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAngle()
	 * @generated
	 * @ordered
	 */
	protected static final BigDecimal ANGLE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getAngle() <em>Angle</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAngle()
	 * @generated
	 * @ordered
	 */
	protected BigDecimal angle = ANGLE_EDEFAULT;

	/**
	 * The default value of the '{@link #getBow() <em>Bow</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBow()
	 * @generated
	 * @ordered
	 */
	protected static final Length BOW_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getBow() <em>Bow</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBow()
	 * @generated
	 * @ordered
	 */
	protected Length bow = BOW_EDEFAULT;

	/**
	 * The default value of the '{@link #getPlumbing() <em>Plumbing</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlumbing()
	 * @generated
	 * @ordered
	 */
	protected static final Boolean PLUMBING_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPlumbing() <em>Plumbing</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlumbing()
	 * @generated
	 * @ordered
	 */
	protected Boolean plumbing = PLUMBING_EDEFAULT;

	/**
	 * The default value of the '{@link #getRated() <em>Rated</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRated()
	 * @generated
	 * @ordered
	 */
	protected static final Boolean RATED_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getRated() <em>Rated</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRated()
	 * @generated
	 * @ordered
	 */
	protected Boolean rated = RATED_EDEFAULT;

	/**
	 * The default value of the '{@link #getWallboard() <em>Wallboard</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWallboard()
	 * @generated
	 * @ordered
	 */
	protected static final Length WALLBOARD_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getWallboard() <em>Wallboard</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWallboard()
	 * @generated
	 * @ordered
	 */
	protected Length wallboard = WALLBOARD_EDEFAULT;

	/**
	 * The default value of the '{@link #getStudSpacing() <em>Stud Spacing</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStudSpacing()
	 * @generated
	 * @ordered
	 */
	protected static final Length STUD_SPACING_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getStudSpacing() <em>Stud Spacing</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStudSpacing()
	 * @generated
	 * @ordered
	 */
	protected Length studSpacing = STUD_SPACING_EDEFAULT;

	/**
	 * The default value of the '{@link #getStudSpacingUnknown() <em>Stud Spacing Unknown</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStudSpacingUnknown()
	 * @generated
	 * @ordered
	 */
	protected static final Boolean STUD_SPACING_UNKNOWN_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getStudSpacingUnknown() <em>Stud Spacing Unknown</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStudSpacingUnknown()
	 * @generated
	 * @ordered
	 */
	protected Boolean studSpacingUnknown = STUD_SPACING_UNKNOWN_EDEFAULT;

	/**
	 * The cached value of the '{@link #getCorner() <em>Corner</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCorner()
	 * @generated
	 * @ordered
	 */
	protected Corner corner;

	/**
	 * The cached value of the '{@link #getOpenings() <em>Openings</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOpenings()
	 * @generated
	 * @ordered
	 */
	protected EList<Opening> openings;

	/**
	 * The cached value of the '{@link #getFixtures() <em>Fixtures</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFixtures()
	 * @generated
	 * @ordered
	 */
	protected EList<Fixture> fixtures;

	/**
	 * The cached value of the '{@link #getBoxes() <em>Boxes</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBoxes()
	 * @generated
	 * @ordered
	 */
	protected EList<Box> boxes;

	/**
	 * The cached value of the '{@link #getTrims() <em>Trims</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTrims()
	 * @generated
	 * @ordered
	 */
	protected EList<ExistingTrim> trims;

	/**
	 * The cached value of the '{@link #getServices() <em>Services</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getServices()
	 * @generated
	 * @ordered
	 */
	protected EList<Service> services;

	/**
	 * The cached value of the '{@link #getPlacedFrames() <em>Placed Frames</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlacedFrames()
	 * @generated
	 * @ordered
	 */
	protected EList<PlacedFrame> placedFrames;

	/**
	 * The cached value of the '{@link #getAxes() <em>Axes</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAxes()
	 * @generated
	 * @ordered
	 */
	protected EList<Axis> axes;

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
	protected WallImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return WainscribePackage.Literals.WALL;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Room getRoom() {
		if (eContainerFeatureID() != WainscribePackage.WALL__ROOM) return null;
		return (Room)eInternalContainer();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetRoom(Room newRoom, NotificationChain msgs) {
		msgs = eBasicSetContainer((InternalEObject)newRoom, WainscribePackage.WALL__ROOM, msgs);
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRoom(Room newRoom) {
		if (newRoom != eInternalContainer() || (eContainerFeatureID() != WainscribePackage.WALL__ROOM && newRoom != null)) {
			if (EcoreUtil.isAncestor(this, newRoom))
				throw new IllegalArgumentException("Recursive containment not allowed for " + toString());
			NotificationChain msgs = null;
			if (eInternalContainer() != null)
				msgs = eBasicRemoveFromContainer(msgs);
			if (newRoom != null)
				msgs = ((InternalEObject)newRoom).eInverseAdd(this, WainscribePackage.ROOM__WALLS, Room.class, msgs);
			msgs = basicSetRoom(newRoom, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.WALL__ROOM, newRoom, newRoom));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getLength() {
		return length;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLength(Length newLength) {
		Length oldLength = length;
		length = newLength;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.WALL__LENGTH, oldLength, length));
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
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.WALL__HEIGHT, oldHeight, height));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getHeightRight() {
		return heightRight;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setHeightRight(Length newHeightRight) {
		Length oldHeightRight = heightRight;
		heightRight = newHeightRight;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.WALL__HEIGHT_RIGHT, oldHeightRight, heightRight));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getFloorRight() {
		return floorRight;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFloorRight(Length newFloorRight) {
		Length oldFloorRight = floorRight;
		floorRight = newFloorRight;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.WALL__FLOOR_RIGHT, oldFloorRight, floorRight));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public BigDecimal getAngle() {
		return angle;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAngle(BigDecimal newAngle) {
		BigDecimal oldAngle = angle;
		angle = newAngle;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.WALL__ANGLE, oldAngle, angle));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getBow() {
		return bow;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBow(Length newBow) {
		Length oldBow = bow;
		bow = newBow;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.WALL__BOW, oldBow, bow));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Boolean getPlumbing() {
		return plumbing;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPlumbing(Boolean newPlumbing) {
		Boolean oldPlumbing = plumbing;
		plumbing = newPlumbing;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.WALL__PLUMBING, oldPlumbing, plumbing));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Boolean getRated() {
		return rated;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRated(Boolean newRated) {
		Boolean oldRated = rated;
		rated = newRated;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.WALL__RATED, oldRated, rated));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getWallboard() {
		return wallboard;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWallboard(Length newWallboard) {
		Length oldWallboard = wallboard;
		wallboard = newWallboard;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.WALL__WALLBOARD, oldWallboard, wallboard));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getStudSpacing() {
		return studSpacing;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setStudSpacing(Length newStudSpacing) {
		Length oldStudSpacing = studSpacing;
		studSpacing = newStudSpacing;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.WALL__STUD_SPACING, oldStudSpacing, studSpacing));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Boolean getStudSpacingUnknown() {
		return studSpacingUnknown;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setStudSpacingUnknown(Boolean newStudSpacingUnknown) {
		Boolean oldStudSpacingUnknown = studSpacingUnknown;
		studSpacingUnknown = newStudSpacingUnknown;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.WALL__STUD_SPACING_UNKNOWN, oldStudSpacingUnknown, studSpacingUnknown));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Corner getCorner() {
		return corner;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetCorner(Corner newCorner, NotificationChain msgs) {
		Corner oldCorner = corner;
		corner = newCorner;
		if (eNotificationRequired()) {
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, WainscribePackage.WALL__CORNER, oldCorner, newCorner);
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
	public void setCorner(Corner newCorner) {
		if (newCorner != corner) {
			NotificationChain msgs = null;
			if (corner != null)
				msgs = ((InternalEObject)corner).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - WainscribePackage.WALL__CORNER, null, msgs);
			if (newCorner != null)
				msgs = ((InternalEObject)newCorner).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - WainscribePackage.WALL__CORNER, null, msgs);
			msgs = basicSetCorner(newCorner, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.WALL__CORNER, newCorner, newCorner));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Opening> getOpenings() {
		if (openings == null) {
			openings = new EObjectContainmentEList<Opening>(Opening.class, this, WainscribePackage.WALL__OPENINGS);
		}
		return openings;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Fixture> getFixtures() {
		if (fixtures == null) {
			fixtures = new EObjectContainmentEList<Fixture>(Fixture.class, this, WainscribePackage.WALL__FIXTURES);
		}
		return fixtures;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Box> getBoxes() {
		if (boxes == null) {
			boxes = new EObjectContainmentEList<Box>(Box.class, this, WainscribePackage.WALL__BOXES);
		}
		return boxes;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<ExistingTrim> getTrims() {
		if (trims == null) {
			trims = new EObjectContainmentEList<ExistingTrim>(ExistingTrim.class, this, WainscribePackage.WALL__TRIMS);
		}
		return trims;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Service> getServices() {
		if (services == null) {
			services = new EObjectContainmentEList<Service>(Service.class, this, WainscribePackage.WALL__SERVICES);
		}
		return services;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<PlacedFrame> getPlacedFrames() {
		if (placedFrames == null) {
			placedFrames = new EObjectContainmentEList<PlacedFrame>(PlacedFrame.class, this, WainscribePackage.WALL__PLACED_FRAMES);
		}
		return placedFrames;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Axis> getAxes() {
		if (axes == null) {
			axes = new EObjectContainmentEList<Axis>(Axis.class, this, WainscribePackage.WALL__AXES);
		}
		return axes;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Guide> getGuides() {
		if (guides == null) {
			guides = new EObjectContainmentEList<Guide>(Guide.class, this, WainscribePackage.WALL__GUIDES);
		}
		return guides;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseAdd(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case WainscribePackage.WALL__ROOM:
				if (eInternalContainer() != null)
					msgs = eBasicRemoveFromContainer(msgs);
				return basicSetRoom((Room)otherEnd, msgs);
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
			case WainscribePackage.WALL__ROOM:
				return basicSetRoom(null, msgs);
			case WainscribePackage.WALL__CORNER:
				return basicSetCorner(null, msgs);
			case WainscribePackage.WALL__OPENINGS:
				return ((InternalEList<?>)getOpenings()).basicRemove(otherEnd, msgs);
			case WainscribePackage.WALL__FIXTURES:
				return ((InternalEList<?>)getFixtures()).basicRemove(otherEnd, msgs);
			case WainscribePackage.WALL__BOXES:
				return ((InternalEList<?>)getBoxes()).basicRemove(otherEnd, msgs);
			case WainscribePackage.WALL__TRIMS:
				return ((InternalEList<?>)getTrims()).basicRemove(otherEnd, msgs);
			case WainscribePackage.WALL__SERVICES:
				return ((InternalEList<?>)getServices()).basicRemove(otherEnd, msgs);
			case WainscribePackage.WALL__PLACED_FRAMES:
				return ((InternalEList<?>)getPlacedFrames()).basicRemove(otherEnd, msgs);
			case WainscribePackage.WALL__AXES:
				return ((InternalEList<?>)getAxes()).basicRemove(otherEnd, msgs);
			case WainscribePackage.WALL__GUIDES:
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
	public NotificationChain eBasicRemoveFromContainerFeature(NotificationChain msgs) {
		switch (eContainerFeatureID()) {
			case WainscribePackage.WALL__ROOM:
				return eInternalContainer().eInverseRemove(this, WainscribePackage.ROOM__WALLS, Room.class, msgs);
		}
		return super.eBasicRemoveFromContainerFeature(msgs);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case WainscribePackage.WALL__ROOM:
				return getRoom();
			case WainscribePackage.WALL__LENGTH:
				return getLength();
			case WainscribePackage.WALL__HEIGHT:
				return getHeight();
			case WainscribePackage.WALL__HEIGHT_RIGHT:
				return getHeightRight();
			case WainscribePackage.WALL__FLOOR_RIGHT:
				return getFloorRight();
			case WainscribePackage.WALL__ANGLE:
				return getAngle();
			case WainscribePackage.WALL__BOW:
				return getBow();
			case WainscribePackage.WALL__PLUMBING:
				return getPlumbing();
			case WainscribePackage.WALL__RATED:
				return getRated();
			case WainscribePackage.WALL__WALLBOARD:
				return getWallboard();
			case WainscribePackage.WALL__STUD_SPACING:
				return getStudSpacing();
			case WainscribePackage.WALL__STUD_SPACING_UNKNOWN:
				return getStudSpacingUnknown();
			case WainscribePackage.WALL__CORNER:
				return getCorner();
			case WainscribePackage.WALL__OPENINGS:
				return getOpenings();
			case WainscribePackage.WALL__FIXTURES:
				return getFixtures();
			case WainscribePackage.WALL__BOXES:
				return getBoxes();
			case WainscribePackage.WALL__TRIMS:
				return getTrims();
			case WainscribePackage.WALL__SERVICES:
				return getServices();
			case WainscribePackage.WALL__PLACED_FRAMES:
				return getPlacedFrames();
			case WainscribePackage.WALL__AXES:
				return getAxes();
			case WainscribePackage.WALL__GUIDES:
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
			case WainscribePackage.WALL__ROOM:
				setRoom((Room)newValue);
				return;
			case WainscribePackage.WALL__LENGTH:
				setLength((Length)newValue);
				return;
			case WainscribePackage.WALL__HEIGHT:
				setHeight((Length)newValue);
				return;
			case WainscribePackage.WALL__HEIGHT_RIGHT:
				setHeightRight((Length)newValue);
				return;
			case WainscribePackage.WALL__FLOOR_RIGHT:
				setFloorRight((Length)newValue);
				return;
			case WainscribePackage.WALL__ANGLE:
				setAngle((BigDecimal)newValue);
				return;
			case WainscribePackage.WALL__BOW:
				setBow((Length)newValue);
				return;
			case WainscribePackage.WALL__PLUMBING:
				setPlumbing((Boolean)newValue);
				return;
			case WainscribePackage.WALL__RATED:
				setRated((Boolean)newValue);
				return;
			case WainscribePackage.WALL__WALLBOARD:
				setWallboard((Length)newValue);
				return;
			case WainscribePackage.WALL__STUD_SPACING:
				setStudSpacing((Length)newValue);
				return;
			case WainscribePackage.WALL__STUD_SPACING_UNKNOWN:
				setStudSpacingUnknown((Boolean)newValue);
				return;
			case WainscribePackage.WALL__CORNER:
				setCorner((Corner)newValue);
				return;
			case WainscribePackage.WALL__OPENINGS:
				getOpenings().clear();
				getOpenings().addAll((Collection<? extends Opening>)newValue);
				return;
			case WainscribePackage.WALL__FIXTURES:
				getFixtures().clear();
				getFixtures().addAll((Collection<? extends Fixture>)newValue);
				return;
			case WainscribePackage.WALL__BOXES:
				getBoxes().clear();
				getBoxes().addAll((Collection<? extends Box>)newValue);
				return;
			case WainscribePackage.WALL__TRIMS:
				getTrims().clear();
				getTrims().addAll((Collection<? extends ExistingTrim>)newValue);
				return;
			case WainscribePackage.WALL__SERVICES:
				getServices().clear();
				getServices().addAll((Collection<? extends Service>)newValue);
				return;
			case WainscribePackage.WALL__PLACED_FRAMES:
				getPlacedFrames().clear();
				getPlacedFrames().addAll((Collection<? extends PlacedFrame>)newValue);
				return;
			case WainscribePackage.WALL__AXES:
				getAxes().clear();
				getAxes().addAll((Collection<? extends Axis>)newValue);
				return;
			case WainscribePackage.WALL__GUIDES:
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
			case WainscribePackage.WALL__ROOM:
				setRoom((Room)null);
				return;
			case WainscribePackage.WALL__LENGTH:
				setLength(LENGTH_EDEFAULT);
				return;
			case WainscribePackage.WALL__HEIGHT:
				setHeight(HEIGHT_EDEFAULT);
				return;
			case WainscribePackage.WALL__HEIGHT_RIGHT:
				setHeightRight(HEIGHT_RIGHT_EDEFAULT);
				return;
			case WainscribePackage.WALL__FLOOR_RIGHT:
				setFloorRight(FLOOR_RIGHT_EDEFAULT);
				return;
			case WainscribePackage.WALL__ANGLE:
				setAngle(ANGLE_EDEFAULT);
				return;
			case WainscribePackage.WALL__BOW:
				setBow(BOW_EDEFAULT);
				return;
			case WainscribePackage.WALL__PLUMBING:
				setPlumbing(PLUMBING_EDEFAULT);
				return;
			case WainscribePackage.WALL__RATED:
				setRated(RATED_EDEFAULT);
				return;
			case WainscribePackage.WALL__WALLBOARD:
				setWallboard(WALLBOARD_EDEFAULT);
				return;
			case WainscribePackage.WALL__STUD_SPACING:
				setStudSpacing(STUD_SPACING_EDEFAULT);
				return;
			case WainscribePackage.WALL__STUD_SPACING_UNKNOWN:
				setStudSpacingUnknown(STUD_SPACING_UNKNOWN_EDEFAULT);
				return;
			case WainscribePackage.WALL__CORNER:
				setCorner((Corner)null);
				return;
			case WainscribePackage.WALL__OPENINGS:
				getOpenings().clear();
				return;
			case WainscribePackage.WALL__FIXTURES:
				getFixtures().clear();
				return;
			case WainscribePackage.WALL__BOXES:
				getBoxes().clear();
				return;
			case WainscribePackage.WALL__TRIMS:
				getTrims().clear();
				return;
			case WainscribePackage.WALL__SERVICES:
				getServices().clear();
				return;
			case WainscribePackage.WALL__PLACED_FRAMES:
				getPlacedFrames().clear();
				return;
			case WainscribePackage.WALL__AXES:
				getAxes().clear();
				return;
			case WainscribePackage.WALL__GUIDES:
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
			case WainscribePackage.WALL__ROOM:
				return getRoom() != null;
			case WainscribePackage.WALL__LENGTH:
				return LENGTH_EDEFAULT == null ? length != null : !LENGTH_EDEFAULT.equals(length);
			case WainscribePackage.WALL__HEIGHT:
				return HEIGHT_EDEFAULT == null ? height != null : !HEIGHT_EDEFAULT.equals(height);
			case WainscribePackage.WALL__HEIGHT_RIGHT:
				return HEIGHT_RIGHT_EDEFAULT == null ? heightRight != null : !HEIGHT_RIGHT_EDEFAULT.equals(heightRight);
			case WainscribePackage.WALL__FLOOR_RIGHT:
				return FLOOR_RIGHT_EDEFAULT == null ? floorRight != null : !FLOOR_RIGHT_EDEFAULT.equals(floorRight);
			case WainscribePackage.WALL__ANGLE:
				return ANGLE_EDEFAULT == null ? angle != null : !ANGLE_EDEFAULT.equals(angle);
			case WainscribePackage.WALL__BOW:
				return BOW_EDEFAULT == null ? bow != null : !BOW_EDEFAULT.equals(bow);
			case WainscribePackage.WALL__PLUMBING:
				return PLUMBING_EDEFAULT == null ? plumbing != null : !PLUMBING_EDEFAULT.equals(plumbing);
			case WainscribePackage.WALL__RATED:
				return RATED_EDEFAULT == null ? rated != null : !RATED_EDEFAULT.equals(rated);
			case WainscribePackage.WALL__WALLBOARD:
				return WALLBOARD_EDEFAULT == null ? wallboard != null : !WALLBOARD_EDEFAULT.equals(wallboard);
			case WainscribePackage.WALL__STUD_SPACING:
				return STUD_SPACING_EDEFAULT == null ? studSpacing != null : !STUD_SPACING_EDEFAULT.equals(studSpacing);
			case WainscribePackage.WALL__STUD_SPACING_UNKNOWN:
				return STUD_SPACING_UNKNOWN_EDEFAULT == null ? studSpacingUnknown != null : !STUD_SPACING_UNKNOWN_EDEFAULT.equals(studSpacingUnknown);
			case WainscribePackage.WALL__CORNER:
				return corner != null;
			case WainscribePackage.WALL__OPENINGS:
				return openings != null && !openings.isEmpty();
			case WainscribePackage.WALL__FIXTURES:
				return fixtures != null && !fixtures.isEmpty();
			case WainscribePackage.WALL__BOXES:
				return boxes != null && !boxes.isEmpty();
			case WainscribePackage.WALL__TRIMS:
				return trims != null && !trims.isEmpty();
			case WainscribePackage.WALL__SERVICES:
				return services != null && !services.isEmpty();
			case WainscribePackage.WALL__PLACED_FRAMES:
				return placedFrames != null && !placedFrames.isEmpty();
			case WainscribePackage.WALL__AXES:
				return axes != null && !axes.isEmpty();
			case WainscribePackage.WALL__GUIDES:
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
		result.append(" (length: ");
		result.append(length);
		result.append(", height: ");
		result.append(height);
		result.append(", heightRight: ");
		result.append(heightRight);
		result.append(", floorRight: ");
		result.append(floorRight);
		result.append(", angle: ");
		result.append(angle);
		result.append(", bow: ");
		result.append(bow);
		result.append(", plumbing: ");
		result.append(plumbing);
		result.append(", rated: ");
		result.append(rated);
		result.append(", wallboard: ");
		result.append(wallboard);
		result.append(", studSpacing: ");
		result.append(studSpacing);
		result.append(", studSpacingUnknown: ");
		result.append(studSpacingUnknown);
		result.append(')');
		return result.toString();
	}

} //WallImpl
