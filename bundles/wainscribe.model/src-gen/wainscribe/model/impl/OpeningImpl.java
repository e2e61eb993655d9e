/**
 * SPDX-License-Identifier: EPL-2.0
 */
package wainscribe.model.impl;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import wainscribe.model.Glazing;
import wainscribe.model.Opening;
import wainscribe.model.OpeningKind;
import wainscribe.model.Swing;
import wainscribe.model.WainscribePackage;

import wainscribe.model.length.Length;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Opening</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link wainscribe.model.impl.OpeningImpl#getKind <em>Kind</em>}</li>
 *   <li>{@link wainscribe.model.impl.OpeningImpl#getCasing <em>Casing</em>}</li>
 *   <li>{@link wainscribe.model.impl.OpeningImpl#getCasingDepth <em>Casing Depth</em>}</li>
 *   <li>{@link wainscribe.model.impl.OpeningImpl#getReveal <em>Reveal</em>}</li>
 *   <li>{@link wainscribe.model.impl.OpeningImpl#getStool <em>Stool</em>}</li>
 *   <li>{@link wainscribe.model.impl.OpeningImpl#getApron <em>Apron</em>}</li>
 *   <li>{@link wainscribe.model.impl.OpeningImpl#getSwing <em>Swing</em>}</li>
 *   <li>{@link wainscribe.model.impl.OpeningImpl#getEgress <em>Egress</em>}</li>
 *   <li>{@link wainscribe.model.impl.OpeningImpl#getGlazing <em>Glazing</em>}</li>
 * </ul>
 *
 * @generated
 */
public class OpeningImpl extends PlacedImpl implements Opening {
	/**
	 * The default value of the '{@link #getKind() <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getKind()
	 * @generated
	 * @ordered
	 */
	protected static final OpeningKind KIND_EDEFAULT = OpeningKind.DOOR;

	/**
	 * The cached value of the '{@link #getKind() <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getKind()
	 * @generated
	 * @ordered
	 */
	protected OpeningKind kind = KIND_EDEFAULT;

	/**
	 * The default value of the '{@link #getCasing() <em>Casing</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCasing()
	 * @generated
	 * @ordered
	 */
	protected static final Length CASING_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCasing() <em>Casing</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCasing()
	 * @generated
	 * @ordered
	 */
	protected Length casing = CASING_EDEFAULT;

	/**
	 * The default value of the '{@link #getCasingDepth() <em>Casing Depth</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCasingDepth()
	 * @generated
	 * @ordered
	 */
	protected static final Length CASING_DEPTH_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCasingDepth() <em>Casing Depth</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCasingDepth()
	 * @generated
	 * @ordered
	 */
	protected Length casingDepth = CASING_DEPTH_EDEFAULT;

	/**
	 * The default value of the '{@link #getReveal() <em>Reveal</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getReveal()
	 * @generated
	 * @ordered
	 */
	protected static final Length REVEAL_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getReveal() <em>Reveal</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getReveal()
	 * @generated
	 * @ordered
	 */
	protected Length reveal = REVEAL_EDEFAULT;

	/**
	 * The default value of the '{@link #getStool() <em>Stool</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStool()
	 * @generated
	 * @ordered
	 */
	protected static final Length STOOL_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getStool() <em>Stool</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStool()
	 * @generated
	 * @ordered
	 */
	protected Length stool = STOOL_EDEFAULT;

	/**
	 * The default value of the '{@link #getApron() <em>Apron</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getApron()
	 * @generated
	 * @ordered
	 */
	protected static final Length APRON_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getApron() <em>Apron</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getApron()
	 * @generated
	 * @ordered
	 */
	protected Length apron = APRON_EDEFAULT;

	/**
	 * The default value of the '{@link #getSwing() <em>Swing</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSwing()
	 * @generated
	 * @ordered
	 */
	protected static final Swing SWING_EDEFAULT = Swing.UNRECORDED;

	/**
	 * The cached value of the '{@link #getSwing() <em>Swing</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSwing()
	 * @generated
	 * @ordered
	 */
	protected Swing swing = SWING_EDEFAULT;

	/**
	 * The default value of the '{@link #getEgress() <em>Egress</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getEgress()
	 * @generated
	 * @ordered
	 */
	protected static final Boolean EGRESS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getEgress() <em>Egress</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getEgress()
	 * @generated
	 * @ordered
	 */
	protected Boolean egress = EGRESS_EDEFAULT;

	/**
	 * The default value of the '{@link #getGlazing() <em>Glazing</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGlazing()
	 * @generated
	 * @ordered
	 */
	protected static final Glazing GLAZING_EDEFAULT = Glazing.UNRECORDED;

	/**
	 * The cached value of the '{@link #getGlazing() <em>Glazing</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGlazing()
	 * @generated
	 * @ordered
	 */
	protected Glazing glazing = GLAZING_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected OpeningImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return WainscribePackage.Literals.OPENING;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public OpeningKind getKind() {
		return kind;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setKind(OpeningKind newKind) {
		OpeningKind oldKind = kind;
		kind = newKind == null ? KIND_EDEFAULT : newKind;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.OPENING__KIND, oldKind, kind));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getCasing() {
		return casing;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCasing(Length newCasing) {
		Length oldCasing = casing;
		casing = newCasing;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.OPENING__CASING, oldCasing, casing));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getCasingDepth() {
		return casingDepth;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCasingDepth(Length newCasingDepth) {
		Length oldCasingDepth = casingDepth;
		casingDepth = newCasingDepth;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.OPENING__CASING_DEPTH, oldCasingDepth, casingDepth));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getReveal() {
		return reveal;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setReveal(Length newReveal) {
		Length oldReveal = reveal;
		reveal = newReveal;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.OPENING__REVEAL, oldReveal, reveal));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getStool() {
		return stool;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setStool(Length newStool) {
		Length oldStool = stool;
		stool = newStool;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.OPENING__STOOL, oldStool, stool));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getApron() {
		return apron;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setApron(Length newApron) {
		Length oldApron = apron;
		apron = newApron;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.OPENING__APRON, oldApron, apron));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Swing getSwing() {
		return swing;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSwing(Swing newSwing) {
		Swing oldSwing = swing;
		swing = newSwing == null ? SWING_EDEFAULT : newSwing;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.OPENING__SWING, oldSwing, swing));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Boolean getEgress() {
		return egress;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setEgress(Boolean newEgress) {
		Boolean oldEgress = egress;
		egress = newEgress;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.OPENING__EGRESS, oldEgress, egress));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Glazing getGlazing() {
		return glazing;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setGlazing(Glazing newGlazing) {
		Glazing oldGlazing = glazing;
		glazing = newGlazing == null ? GLAZING_EDEFAULT : newGlazing;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.OPENING__GLAZING, oldGlazing, glazing));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case WainscribePackage.OPENING__KIND:
				return getKind();
			case WainscribePackage.OPENING__CASING:
				return getCasing();
			case WainscribePackage.OPENING__CASING_DEPTH:
				return getCasingDepth();
			case WainscribePackage.OPENING__REVEAL:
				return getReveal();
			case WainscribePackage.OPENING__STOOL:
				return getStool();
			case WainscribePackage.OPENING__APRON:
				return getApron();
			case WainscribePackage.OPENING__SWING:
				return getSwing();
			case WainscribePackage.OPENING__EGRESS:
				return getEgress();
			case WainscribePackage.OPENING__GLAZING:
				return getGlazing();
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
			case WainscribePackage.OPENING__KIND:
				setKind((OpeningKind)newValue);
				return;
			case WainscribePackage.OPENING__CASING:
				setCasing((Length)newValue);
				return;
			case WainscribePackage.OPENING__CASING_DEPTH:
				setCasingDepth((Length)newValue);
				return;
			case WainscribePackage.OPENING__REVEAL:
				setReveal((Length)newValue);
				return;
			case WainscribePackage.OPENING__STOOL:
				setStool((Length)newValue);
				return;
			case WainscribePackage.OPENING__APRON:
				setApron((Length)newValue);
				return;
			case WainscribePackage.OPENING__SWING:
				setSwing((Swing)newValue);
				return;
			case WainscribePackage.OPENING__EGRESS:
				setEgress((Boolean)newValue);
				return;
			case WainscribePackage.OPENING__GLAZING:
				setGlazing((Glazing)newValue);
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
			case WainscribePackage.OPENING__KIND:
				setKind(KIND_EDEFAULT);
				return;
			case WainscribePackage.OPENING__CASING:
				setCasing(CASING_EDEFAULT);
				return;
			case WainscribePackage.OPENING__CASING_DEPTH:
				setCasingDepth(CASING_DEPTH_EDEFAULT);
				return;
			case WainscribePackage.OPENING__REVEAL:
				setReveal(REVEAL_EDEFAULT);
				return;
			case WainscribePackage.OPENING__STOOL:
				setStool(STOOL_EDEFAULT);
				return;
			case WainscribePackage.OPENING__APRON:
				setApron(APRON_EDEFAULT);
				return;
			case WainscribePackage.OPENING__SWING:
				setSwing(SWING_EDEFAULT);
				return;
			case WainscribePackage.OPENING__EGRESS:
				setEgress(EGRESS_EDEFAULT);
				return;
			case WainscribePackage.OPENING__GLAZING:
				setGlazing(GLAZING_EDEFAULT);
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
			case WainscribePackage.OPENING__KIND:
				return kind != KIND_EDEFAULT;
			case WainscribePackage.OPENING__CASING:
				return CASING_EDEFAULT == null ? casing != null : !CASING_EDEFAULT.equals(casing);
			case WainscribePackage.OPENING__CASING_DEPTH:
				return CASING_DEPTH_EDEFAULT == null ? casingDepth != null : !CASING_DEPTH_EDEFAULT.equals(casingDepth);
			case WainscribePackage.OPENING__REVEAL:
				return REVEAL_EDEFAULT == null ? reveal != null : !REVEAL_EDEFAULT.equals(reveal);
			case WainscribePackage.OPENING__STOOL:
				return STOOL_EDEFAULT == null ? stool != null : !STOOL_EDEFAULT.equals(stool);
			case WainscribePackage.OPENING__APRON:
				return APRON_EDEFAULT == null ? apron != null : !APRON_EDEFAULT.equals(apron);
			case WainscribePackage.OPENING__SWING:
				return swing != SWING_EDEFAULT;
			case WainscribePackage.OPENING__EGRESS:
				return EGRESS_EDEFAULT == null ? egress != null : !EGRESS_EDEFAULT.equals(egress);
			case WainscribePackage.OPENING__GLAZING:
				return glazing != GLAZING_EDEFAULT;
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
		result.append(" (kind: ");
		result.append(kind);
		result.append(", casing: ");
		result.append(casing);
		result.append(", casingDepth: ");
		result.append(casingDepth);
		result.append(", reveal: ");
		result.append(reveal);
		result.append(", stool: ");
		result.append(stool);
		result.append(", apron: ");
		result.append(apron);
		result.append(", swing: ");
		result.append(swing);
		result.append(", egress: ");
		result.append(egress);
		result.append(", glazing: ");
		result.append(glazing);
		result.append(')');
		return result.toString();
	}

} //OpeningImpl
