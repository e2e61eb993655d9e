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
import wainscribe.model.CasingJoint;
import wainscribe.model.InsideJoint;
import wainscribe.model.Material;
import wainscribe.model.ProfileReference;
import wainscribe.model.SawScale;
import wainscribe.model.WainscribePackage;

import wainscribe.model.length.Length;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Brief</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link wainscribe.model.impl.BriefImpl#getPattern <em>Pattern</em>}</li>
 *   <li>{@link wainscribe.model.impl.BriefImpl#getRail <em>Rail</em>}</li>
 *   <li>{@link wainscribe.model.impl.BriefImpl#getRailFace <em>Rail Face</em>}</li>
 *   <li>{@link wainscribe.model.impl.BriefImpl#getRailThickness <em>Rail Thickness</em>}</li>
 *   <li>{@link wainscribe.model.impl.BriefImpl#getGap <em>Gap</em>}</li>
 *   <li>{@link wainscribe.model.impl.BriefImpl#getGapY <em>Gap Y</em>}</li>
 *   <li>{@link wainscribe.model.impl.BriefImpl#getFace <em>Face</em>}</li>
 *   <li>{@link wainscribe.model.impl.BriefImpl#getThickness <em>Thickness</em>}</li>
 *   <li>{@link wainscribe.model.impl.BriefImpl#getFrameWidthMin <em>Frame Width Min</em>}</li>
 *   <li>{@link wainscribe.model.impl.BriefImpl#getFrameWidthMax <em>Frame Width Max</em>}</li>
 *   <li>{@link wainscribe.model.impl.BriefImpl#getBase <em>Base</em>}</li>
 *   <li>{@link wainscribe.model.impl.BriefImpl#getCrown <em>Crown</em>}</li>
 *   <li>{@link wainscribe.model.impl.BriefImpl#getMaterial <em>Material</em>}</li>
 *   <li>{@link wainscribe.model.impl.BriefImpl#getStock <em>Stock</em>}</li>
 *   <li>{@link wainscribe.model.impl.BriefImpl#getNail <em>Nail</em>}</li>
 *   <li>{@link wainscribe.model.impl.BriefImpl#getBoard <em>Board</em>}</li>
 *   <li>{@link wainscribe.model.impl.BriefImpl#getBoardWalls <em>Board Walls</em>}</li>
 *   <li>{@link wainscribe.model.impl.BriefImpl#getProfiles <em>Profiles</em>}</li>
 *   <li>{@link wainscribe.model.impl.BriefImpl#getInside <em>Inside</em>}</li>
 *   <li>{@link wainscribe.model.impl.BriefImpl#getBaseAtCasing <em>Base At Casing</em>}</li>
 *   <li>{@link wainscribe.model.impl.BriefImpl#getSaw <em>Saw</em>}</li>
 *   <li>{@link wainscribe.model.impl.BriefImpl#getGlassLap <em>Glass Lap</em>}</li>
 *   <li>{@link wainscribe.model.impl.BriefImpl#getGlassClearance <em>Glass Clearance</em>}</li>
 * </ul>
 *
 * @generated
 */
public class BriefImpl extends ElementImpl implements Brief {
	/**
	 * The default value of the '{@link #getPattern() <em>Pattern</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPattern()
	 * @generated
	 * @ordered
	 */
	protected static final String PATTERN_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPattern() <em>Pattern</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPattern()
	 * @generated
	 * @ordered
	 */
	protected String pattern = PATTERN_EDEFAULT;

	/**
	 * The default value of the '{@link #getRail() <em>Rail</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRail()
	 * @generated
	 * @ordered
	 */
	protected static final Length RAIL_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getRail() <em>Rail</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRail()
	 * @generated
	 * @ordered
	 */
	protected Length rail = RAIL_EDEFAULT;

	/**
	 * The default value of the '{@link #getRailFace() <em>Rail Face</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRailFace()
	 * @generated
	 * @ordered
	 */
	protected static final Length RAIL_FACE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getRailFace() <em>Rail Face</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRailFace()
	 * @generated
	 * @ordered
	 */
	protected Length railFace = RAIL_FACE_EDEFAULT;

	/**
	 * The default value of the '{@link #getRailThickness() <em>Rail Thickness</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRailThickness()
	 * @generated
	 * @ordered
	 */
	protected static final Length RAIL_THICKNESS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getRailThickness() <em>Rail Thickness</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRailThickness()
	 * @generated
	 * @ordered
	 */
	protected Length railThickness = RAIL_THICKNESS_EDEFAULT;

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
	 * The default value of the '{@link #getGapY() <em>Gap Y</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGapY()
	 * @generated
	 * @ordered
	 */
	protected static final Length GAP_Y_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getGapY() <em>Gap Y</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGapY()
	 * @generated
	 * @ordered
	 */
	protected Length gapY = GAP_Y_EDEFAULT;

	/**
	 * The default value of the '{@link #getFace() <em>Face</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFace()
	 * @generated
	 * @ordered
	 */
	protected static final Length FACE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getFace() <em>Face</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFace()
	 * @generated
	 * @ordered
	 */
	protected Length face = FACE_EDEFAULT;

	/**
	 * The default value of the '{@link #getThickness() <em>Thickness</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getThickness()
	 * @generated
	 * @ordered
	 */
	protected static final Length THICKNESS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getThickness() <em>Thickness</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getThickness()
	 * @generated
	 * @ordered
	 */
	protected Length thickness = THICKNESS_EDEFAULT;

	/**
	 * The default value of the '{@link #getFrameWidthMin() <em>Frame Width Min</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFrameWidthMin()
	 * @generated
	 * @ordered
	 */
	protected static final Length FRAME_WIDTH_MIN_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getFrameWidthMin() <em>Frame Width Min</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFrameWidthMin()
	 * @generated
	 * @ordered
	 */
	protected Length frameWidthMin = FRAME_WIDTH_MIN_EDEFAULT;

	/**
	 * The default value of the '{@link #getFrameWidthMax() <em>Frame Width Max</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFrameWidthMax()
	 * @generated
	 * @ordered
	 */
	protected static final Length FRAME_WIDTH_MAX_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getFrameWidthMax() <em>Frame Width Max</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFrameWidthMax()
	 * @generated
	 * @ordered
	 */
	protected Length frameWidthMax = FRAME_WIDTH_MAX_EDEFAULT;

	/**
	 * The default value of the '{@link #getBase() <em>Base</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBase()
	 * @generated
	 * @ordered
	 */
	protected static final Length BASE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getBase() <em>Base</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBase()
	 * @generated
	 * @ordered
	 */
	protected Length base = BASE_EDEFAULT;

	/**
	 * The default value of the '{@link #getCrown() <em>Crown</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCrown()
	 * @generated
	 * @ordered
	 */
	protected static final Length CROWN_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCrown() <em>Crown</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCrown()
	 * @generated
	 * @ordered
	 */
	protected Length crown = CROWN_EDEFAULT;

	/**
	 * The default value of the '{@link #getMaterial() <em>Material</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMaterial()
	 * @generated
	 * @ordered
	 */
	protected static final Material MATERIAL_EDEFAULT = Material.UNRECORDED;

	/**
	 * The cached value of the '{@link #getMaterial() <em>Material</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMaterial()
	 * @generated
	 * @ordered
	 */
	protected Material material = MATERIAL_EDEFAULT;

	/**
	 * The cached value of the '{@link #getStock() <em>Stock</em>}' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStock()
	 * @generated
	 * @ordered
	 */
	protected EList<Length> stock;

	/**
	 * The default value of the '{@link #getNail() <em>Nail</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNail()
	 * @generated
	 * @ordered
	 */
	protected static final Length NAIL_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getNail() <em>Nail</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNail()
	 * @generated
	 * @ordered
	 */
	protected Length nail = NAIL_EDEFAULT;

	/**
	 * The default value of the '{@link #getBoard() <em>Board</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBoard()
	 * @generated
	 * @ordered
	 */
	protected static final Length BOARD_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getBoard() <em>Board</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBoard()
	 * @generated
	 * @ordered
	 */
	protected Length board = BOARD_EDEFAULT;

	/**
	 * The cached value of the '{@link #getBoardWalls() <em>Board Walls</em>}' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBoardWalls()
	 * @generated
	 * @ordered
	 */
	protected EList<String> boardWalls;

	/**
	 * The cached value of the '{@link #getProfiles() <em>Profiles</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getProfiles()
	 * @generated
	 * @ordered
	 */
	protected EList<ProfileReference> profiles;

	/**
	 * The default value of the '{@link #getInside() <em>Inside</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getInside()
	 * @generated
	 * @ordered
	 */
	protected static final InsideJoint INSIDE_EDEFAULT = InsideJoint.UNRECORDED;

	/**
	 * The cached value of the '{@link #getInside() <em>Inside</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getInside()
	 * @generated
	 * @ordered
	 */
	protected InsideJoint inside = INSIDE_EDEFAULT;

	/**
	 * The default value of the '{@link #getBaseAtCasing() <em>Base At Casing</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBaseAtCasing()
	 * @generated
	 * @ordered
	 */
	protected static final CasingJoint BASE_AT_CASING_EDEFAULT = CasingJoint.UNRECORDED;

	/**
	 * The cached value of the '{@link #getBaseAtCasing() <em>Base At Casing</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBaseAtCasing()
	 * @generated
	 * @ordered
	 */
	protected CasingJoint baseAtCasing = BASE_AT_CASING_EDEFAULT;

	/**
	 * The default value of the '{@link #getSaw() <em>Saw</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSaw()
	 * @generated
	 * @ordered
	 */
	protected static final SawScale SAW_EDEFAULT = SawScale.UNRECORDED;

	/**
	 * The cached value of the '{@link #getSaw() <em>Saw</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSaw()
	 * @generated
	 * @ordered
	 */
	protected SawScale saw = SAW_EDEFAULT;

	/**
	 * The default value of the '{@link #getGlassLap() <em>Glass Lap</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGlassLap()
	 * @generated
	 * @ordered
	 */
	protected static final Length GLASS_LAP_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getGlassLap() <em>Glass Lap</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGlassLap()
	 * @generated
	 * @ordered
	 */
	protected Length glassLap = GLASS_LAP_EDEFAULT;

	/**
	 * The default value of the '{@link #getGlassClearance() <em>Glass Clearance</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGlassClearance()
	 * @generated
	 * @ordered
	 */
	protected static final Length GLASS_CLEARANCE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getGlassClearance() <em>Glass Clearance</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGlassClearance()
	 * @generated
	 * @ordered
	 */
	protected Length glassClearance = GLASS_CLEARANCE_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected BriefImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return WainscribePackage.Literals.BRIEF;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getPattern() {
		return pattern;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPattern(String newPattern) {
		String oldPattern = pattern;
		pattern = newPattern;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.BRIEF__PATTERN, oldPattern, pattern));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getRail() {
		return rail;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRail(Length newRail) {
		Length oldRail = rail;
		rail = newRail;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.BRIEF__RAIL, oldRail, rail));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getRailFace() {
		return railFace;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRailFace(Length newRailFace) {
		Length oldRailFace = railFace;
		railFace = newRailFace;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.BRIEF__RAIL_FACE, oldRailFace, railFace));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getRailThickness() {
		return railThickness;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRailThickness(Length newRailThickness) {
		Length oldRailThickness = railThickness;
		railThickness = newRailThickness;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.BRIEF__RAIL_THICKNESS, oldRailThickness, railThickness));
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
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.BRIEF__GAP, oldGap, gap));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getGapY() {
		return gapY;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setGapY(Length newGapY) {
		Length oldGapY = gapY;
		gapY = newGapY;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.BRIEF__GAP_Y, oldGapY, gapY));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getFace() {
		return face;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFace(Length newFace) {
		Length oldFace = face;
		face = newFace;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.BRIEF__FACE, oldFace, face));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getThickness() {
		return thickness;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setThickness(Length newThickness) {
		Length oldThickness = thickness;
		thickness = newThickness;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.BRIEF__THICKNESS, oldThickness, thickness));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getFrameWidthMin() {
		return frameWidthMin;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFrameWidthMin(Length newFrameWidthMin) {
		Length oldFrameWidthMin = frameWidthMin;
		frameWidthMin = newFrameWidthMin;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.BRIEF__FRAME_WIDTH_MIN, oldFrameWidthMin, frameWidthMin));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getFrameWidthMax() {
		return frameWidthMax;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFrameWidthMax(Length newFrameWidthMax) {
		Length oldFrameWidthMax = frameWidthMax;
		frameWidthMax = newFrameWidthMax;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.BRIEF__FRAME_WIDTH_MAX, oldFrameWidthMax, frameWidthMax));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getBase() {
		return base;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBase(Length newBase) {
		Length oldBase = base;
		base = newBase;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.BRIEF__BASE, oldBase, base));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getCrown() {
		return crown;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCrown(Length newCrown) {
		Length oldCrown = crown;
		crown = newCrown;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.BRIEF__CROWN, oldCrown, crown));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Material getMaterial() {
		return material;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMaterial(Material newMaterial) {
		Material oldMaterial = material;
		material = newMaterial == null ? MATERIAL_EDEFAULT : newMaterial;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.BRIEF__MATERIAL, oldMaterial, material));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Length> getStock() {
		if (stock == null) {
			stock = new EDataTypeUniqueEList<Length>(Length.class, this, WainscribePackage.BRIEF__STOCK);
		}
		return stock;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getNail() {
		return nail;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setNail(Length newNail) {
		Length oldNail = nail;
		nail = newNail;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.BRIEF__NAIL, oldNail, nail));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getBoard() {
		return board;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBoard(Length newBoard) {
		Length oldBoard = board;
		board = newBoard;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.BRIEF__BOARD, oldBoard, board));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<String> getBoardWalls() {
		if (boardWalls == null) {
			boardWalls = new EDataTypeUniqueEList<String>(String.class, this, WainscribePackage.BRIEF__BOARD_WALLS);
		}
		return boardWalls;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<ProfileReference> getProfiles() {
		if (profiles == null) {
			profiles = new EObjectContainmentEList<ProfileReference>(ProfileReference.class, this, WainscribePackage.BRIEF__PROFILES);
		}
		return profiles;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public InsideJoint getInside() {
		return inside;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setInside(InsideJoint newInside) {
		InsideJoint oldInside = inside;
		inside = newInside == null ? INSIDE_EDEFAULT : newInside;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.BRIEF__INSIDE, oldInside, inside));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public CasingJoint getBaseAtCasing() {
		return baseAtCasing;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBaseAtCasing(CasingJoint newBaseAtCasing) {
		CasingJoint oldBaseAtCasing = baseAtCasing;
		baseAtCasing = newBaseAtCasing == null ? BASE_AT_CASING_EDEFAULT : newBaseAtCasing;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.BRIEF__BASE_AT_CASING, oldBaseAtCasing, baseAtCasing));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public SawScale getSaw() {
		return saw;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSaw(SawScale newSaw) {
		SawScale oldSaw = saw;
		saw = newSaw == null ? SAW_EDEFAULT : newSaw;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.BRIEF__SAW, oldSaw, saw));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getGlassLap() {
		return glassLap;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setGlassLap(Length newGlassLap) {
		Length oldGlassLap = glassLap;
		glassLap = newGlassLap;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.BRIEF__GLASS_LAP, oldGlassLap, glassLap));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getGlassClearance() {
		return glassClearance;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setGlassClearance(Length newGlassClearance) {
		Length oldGlassClearance = glassClearance;
		glassClearance = newGlassClearance;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.BRIEF__GLASS_CLEARANCE, oldGlassClearance, glassClearance));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case WainscribePackage.BRIEF__PROFILES:
				return ((InternalEList<?>)getProfiles()).basicRemove(otherEnd, msgs);
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
			case WainscribePackage.BRIEF__PATTERN:
				return getPattern();
			case WainscribePackage.BRIEF__RAIL:
				return getRail();
			case WainscribePackage.BRIEF__RAIL_FACE:
				return getRailFace();
			case WainscribePackage.BRIEF__RAIL_THICKNESS:
				return getRailThickness();
			case WainscribePackage.BRIEF__GAP:
				return getGap();
			case WainscribePackage.BRIEF__GAP_Y:
				return getGapY();
			case WainscribePackage.BRIEF__FACE:
				return getFace();
			case WainscribePackage.BRIEF__THICKNESS:
				return getThickness();
			case WainscribePackage.BRIEF__FRAME_WIDTH_MIN:
				return getFrameWidthMin();
			case WainscribePackage.BRIEF__FRAME_WIDTH_MAX:
				return getFrameWidthMax();
			case WainscribePackage.BRIEF__BASE:
				return getBase();
			case WainscribePackage.BRIEF__CROWN:
				return getCrown();
			case WainscribePackage.BRIEF__MATERIAL:
				return getMaterial();
			case WainscribePackage.BRIEF__STOCK:
				return getStock();
			case WainscribePackage.BRIEF__NAIL:
				return getNail();
			case WainscribePackage.BRIEF__BOARD:
				return getBoard();
			case WainscribePackage.BRIEF__BOARD_WALLS:
				return getBoardWalls();
			case WainscribePackage.BRIEF__PROFILES:
				return getProfiles();
			case WainscribePackage.BRIEF__INSIDE:
				return getInside();
			case WainscribePackage.BRIEF__BASE_AT_CASING:
				return getBaseAtCasing();
			case WainscribePackage.BRIEF__SAW:
				return getSaw();
			case WainscribePackage.BRIEF__GLASS_LAP:
				return getGlassLap();
			case WainscribePackage.BRIEF__GLASS_CLEARANCE:
				return getGlassClearance();
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
			case WainscribePackage.BRIEF__PATTERN:
				setPattern((String)newValue);
				return;
			case WainscribePackage.BRIEF__RAIL:
				setRail((Length)newValue);
				return;
			case WainscribePackage.BRIEF__RAIL_FACE:
				setRailFace((Length)newValue);
				return;
			case WainscribePackage.BRIEF__RAIL_THICKNESS:
				setRailThickness((Length)newValue);
				return;
			case WainscribePackage.BRIEF__GAP:
				setGap((Length)newValue);
				return;
			case WainscribePackage.BRIEF__GAP_Y:
				setGapY((Length)newValue);
				return;
			case WainscribePackage.BRIEF__FACE:
				setFace((Length)newValue);
				return;
			case WainscribePackage.BRIEF__THICKNESS:
				setThickness((Length)newValue);
				return;
			case WainscribePackage.BRIEF__FRAME_WIDTH_MIN:
				setFrameWidthMin((Length)newValue);
				return;
			case WainscribePackage.BRIEF__FRAME_WIDTH_MAX:
				setFrameWidthMax((Length)newValue);
				return;
			case WainscribePackage.BRIEF__BASE:
				setBase((Length)newValue);
				return;
			case WainscribePackage.BRIEF__CROWN:
				setCrown((Length)newValue);
				return;
			case WainscribePackage.BRIEF__MATERIAL:
				setMaterial((Material)newValue);
				return;
			case WainscribePackage.BRIEF__STOCK:
				getStock().clear();
				getStock().addAll((Collection<? extends Length>)newValue);
				return;
			case WainscribePackage.BRIEF__NAIL:
				setNail((Length)newValue);
				return;
			case WainscribePackage.BRIEF__BOARD:
				setBoard((Length)newValue);
				return;
			case WainscribePackage.BRIEF__BOARD_WALLS:
				getBoardWalls().clear();
				getBoardWalls().addAll((Collection<? extends String>)newValue);
				return;
			case WainscribePackage.BRIEF__PROFILES:
				getProfiles().clear();
				getProfiles().addAll((Collection<? extends ProfileReference>)newValue);
				return;
			case WainscribePackage.BRIEF__INSIDE:
				setInside((InsideJoint)newValue);
				return;
			case WainscribePackage.BRIEF__BASE_AT_CASING:
				setBaseAtCasing((CasingJoint)newValue);
				return;
			case WainscribePackage.BRIEF__SAW:
				setSaw((SawScale)newValue);
				return;
			case WainscribePackage.BRIEF__GLASS_LAP:
				setGlassLap((Length)newValue);
				return;
			case WainscribePackage.BRIEF__GLASS_CLEARANCE:
				setGlassClearance((Length)newValue);
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
			case WainscribePackage.BRIEF__PATTERN:
				setPattern(PATTERN_EDEFAULT);
				return;
			case WainscribePackage.BRIEF__RAIL:
				setRail(RAIL_EDEFAULT);
				return;
			case WainscribePackage.BRIEF__RAIL_FACE:
				setRailFace(RAIL_FACE_EDEFAULT);
				return;
			case WainscribePackage.BRIEF__RAIL_THICKNESS:
				setRailThickness(RAIL_THICKNESS_EDEFAULT);
				return;
			case WainscribePackage.BRIEF__GAP:
				setGap(GAP_EDEFAULT);
				return;
			case WainscribePackage.BRIEF__GAP_Y:
				setGapY(GAP_Y_EDEFAULT);
				return;
			case WainscribePackage.BRIEF__FACE:
				setFace(FACE_EDEFAULT);
				return;
			case WainscribePackage.BRIEF__THICKNESS:
				setThickness(THICKNESS_EDEFAULT);
				return;
			case WainscribePackage.BRIEF__FRAME_WIDTH_MIN:
				setFrameWidthMin(FRAME_WIDTH_MIN_EDEFAULT);
				return;
			case WainscribePackage.BRIEF__FRAME_WIDTH_MAX:
				setFrameWidthMax(FRAME_WIDTH_MAX_EDEFAULT);
				return;
			case WainscribePackage.BRIEF__BASE:
				setBase(BASE_EDEFAULT);
				return;
			case WainscribePackage.BRIEF__CROWN:
				setCrown(CROWN_EDEFAULT);
				return;
			case WainscribePackage.BRIEF__MATERIAL:
				setMaterial(MATERIAL_EDEFAULT);
				return;
			case WainscribePackage.BRIEF__STOCK:
				getStock().clear();
				return;
			case WainscribePackage.BRIEF__NAIL:
				setNail(NAIL_EDEFAULT);
				return;
			case WainscribePackage.BRIEF__BOARD:
				setBoard(BOARD_EDEFAULT);
				return;
			case WainscribePackage.BRIEF__BOARD_WALLS:
				getBoardWalls().clear();
				return;
			case WainscribePackage.BRIEF__PROFILES:
				getProfiles().clear();
				return;
			case WainscribePackage.BRIEF__INSIDE:
				setInside(INSIDE_EDEFAULT);
				return;
			case WainscribePackage.BRIEF__BASE_AT_CASING:
				setBaseAtCasing(BASE_AT_CASING_EDEFAULT);
				return;
			case WainscribePackage.BRIEF__SAW:
				setSaw(SAW_EDEFAULT);
				return;
			case WainscribePackage.BRIEF__GLASS_LAP:
				setGlassLap(GLASS_LAP_EDEFAULT);
				return;
			case WainscribePackage.BRIEF__GLASS_CLEARANCE:
				setGlassClearance(GLASS_CLEARANCE_EDEFAULT);
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
			case WainscribePackage.BRIEF__PATTERN:
				return PATTERN_EDEFAULT == null ? pattern != null : !PATTERN_EDEFAULT.equals(pattern);
			case WainscribePackage.BRIEF__RAIL:
				return RAIL_EDEFAULT == null ? rail != null : !RAIL_EDEFAULT.equals(rail);
			case WainscribePackage.BRIEF__RAIL_FACE:
				return RAIL_FACE_EDEFAULT == null ? railFace != null : !RAIL_FACE_EDEFAULT.equals(railFace);
			case WainscribePackage.BRIEF__RAIL_THICKNESS:
				return RAIL_THICKNESS_EDEFAULT == null ? railThickness != null : !RAIL_THICKNESS_EDEFAULT.equals(railThickness);
			case WainscribePackage.BRIEF__GAP:
				return GAP_EDEFAULT == null ? gap != null : !GAP_EDEFAULT.equals(gap);
			case WainscribePackage.BRIEF__GAP_Y:
				return GAP_Y_EDEFAULT == null ? gapY != null : !GAP_Y_EDEFAULT.equals(gapY);
			case WainscribePackage.BRIEF__FACE:
				return FACE_EDEFAULT == null ? face != null : !FACE_EDEFAULT.equals(face);
			case WainscribePackage.BRIEF__THICKNESS:
				return THICKNESS_EDEFAULT == null ? thickness != null : !THICKNESS_EDEFAULT.equals(thickness);
			case WainscribePackage.BRIEF__FRAME_WIDTH_MIN:
				return FRAME_WIDTH_MIN_EDEFAULT == null ? frameWidthMin != null : !FRAME_WIDTH_MIN_EDEFAULT.equals(frameWidthMin);
			case WainscribePackage.BRIEF__FRAME_WIDTH_MAX:
				return FRAME_WIDTH_MAX_EDEFAULT == null ? frameWidthMax != null : !FRAME_WIDTH_MAX_EDEFAULT.equals(frameWidthMax);
			case WainscribePackage.BRIEF__BASE:
				return BASE_EDEFAULT == null ? base != null : !BASE_EDEFAULT.equals(base);
			case WainscribePackage.BRIEF__CROWN:
				return CROWN_EDEFAULT == null ? crown != null : !CROWN_EDEFAULT.equals(crown);
			case WainscribePackage.BRIEF__MATERIAL:
				return material != MATERIAL_EDEFAULT;
			case WainscribePackage.BRIEF__STOCK:
				return stock != null && !stock.isEmpty();
			case WainscribePackage.BRIEF__NAIL:
				return NAIL_EDEFAULT == null ? nail != null : !NAIL_EDEFAULT.equals(nail);
			case WainscribePackage.BRIEF__BOARD:
				return BOARD_EDEFAULT == null ? board != null : !BOARD_EDEFAULT.equals(board);
			case WainscribePackage.BRIEF__BOARD_WALLS:
				return boardWalls != null && !boardWalls.isEmpty();
			case WainscribePackage.BRIEF__PROFILES:
				return profiles != null && !profiles.isEmpty();
			case WainscribePackage.BRIEF__INSIDE:
				return inside != INSIDE_EDEFAULT;
			case WainscribePackage.BRIEF__BASE_AT_CASING:
				return baseAtCasing != BASE_AT_CASING_EDEFAULT;
			case WainscribePackage.BRIEF__SAW:
				return saw != SAW_EDEFAULT;
			case WainscribePackage.BRIEF__GLASS_LAP:
				return GLASS_LAP_EDEFAULT == null ? glassLap != null : !GLASS_LAP_EDEFAULT.equals(glassLap);
			case WainscribePackage.BRIEF__GLASS_CLEARANCE:
				return GLASS_CLEARANCE_EDEFAULT == null ? glassClearance != null : !GLASS_CLEARANCE_EDEFAULT.equals(glassClearance);
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
		result.append(" (pattern: ");
		result.append(pattern);
		result.append(", rail: ");
		result.append(rail);
		result.append(", railFace: ");
		result.append(railFace);
		result.append(", railThickness: ");
		result.append(railThickness);
		result.append(", gap: ");
		result.append(gap);
		result.append(", gapY: ");
		result.append(gapY);
		result.append(", face: ");
		result.append(face);
		result.append(", thickness: ");
		result.append(thickness);
		result.append(", frameWidthMin: ");
		result.append(frameWidthMin);
		result.append(", frameWidthMax: ");
		result.append(frameWidthMax);
		result.append(", base: ");
		result.append(base);
		result.append(", crown: ");
		result.append(crown);
		result.append(", material: ");
		result.append(material);
		result.append(", stock: ");
		result.append(stock);
		result.append(", nail: ");
		result.append(nail);
		result.append(", board: ");
		result.append(board);
		result.append(", boardWalls: ");
		result.append(boardWalls);
		result.append(", inside: ");
		result.append(inside);
		result.append(", baseAtCasing: ");
		result.append(baseAtCasing);
		result.append(", saw: ");
		result.append(saw);
		result.append(", glassLap: ");
		result.append(glassLap);
		result.append(", glassClearance: ");
		result.append(glassClearance);
		result.append(')');
		return result.toString();
	}

} //BriefImpl
