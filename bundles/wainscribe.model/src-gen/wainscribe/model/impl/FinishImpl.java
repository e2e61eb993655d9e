/**
 * SPDX-License-Identifier: EPL-2.0
 */
package wainscribe.model.impl;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import wainscribe.model.Binder;
import wainscribe.model.Finish;
import wainscribe.model.GlossLevel;
import wainscribe.model.Soundness;
import wainscribe.model.Substrate;
import wainscribe.model.SurfaceZone;
import wainscribe.model.WainscribePackage;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Finish</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link wainscribe.model.impl.FinishImpl#getZone <em>Zone</em>}</li>
 *   <li>{@link wainscribe.model.impl.FinishImpl#getGloss <em>Gloss</em>}</li>
 *   <li>{@link wainscribe.model.impl.FinishImpl#getBinder <em>Binder</em>}</li>
 *   <li>{@link wainscribe.model.impl.FinishImpl#getSubstrate <em>Substrate</em>}</li>
 *   <li>{@link wainscribe.model.impl.FinishImpl#getSound <em>Sound</em>}</li>
 *   <li>{@link wainscribe.model.impl.FinishImpl#getTexture <em>Texture</em>}</li>
 *   <li>{@link wainscribe.model.impl.FinishImpl#getDisturb <em>Disturb</em>}</li>
 * </ul>
 *
 * @generated
 */
public class FinishImpl extends ElementImpl implements Finish {
	/**
	 * The cached value of the '{@link #getZone() <em>Zone</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getZone()
	 * @generated
	 * @ordered
	 */
	protected SurfaceZone zone;

	/**
	 * The default value of the '{@link #getGloss() <em>Gloss</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGloss()
	 * @generated
	 * @ordered
	 */
	protected static final GlossLevel GLOSS_EDEFAULT = GlossLevel.UNRECORDED;

	/**
	 * The cached value of the '{@link #getGloss() <em>Gloss</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGloss()
	 * @generated
	 * @ordered
	 */
	protected GlossLevel gloss = GLOSS_EDEFAULT;

	/**
	 * The default value of the '{@link #getBinder() <em>Binder</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBinder()
	 * @generated
	 * @ordered
	 */
	protected static final Binder BINDER_EDEFAULT = Binder.UNRECORDED;

	/**
	 * The cached value of the '{@link #getBinder() <em>Binder</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBinder()
	 * @generated
	 * @ordered
	 */
	protected Binder binder = BINDER_EDEFAULT;

	/**
	 * The default value of the '{@link #getSubstrate() <em>Substrate</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSubstrate()
	 * @generated
	 * @ordered
	 */
	protected static final Substrate SUBSTRATE_EDEFAULT = Substrate.UNRECORDED;

	/**
	 * The cached value of the '{@link #getSubstrate() <em>Substrate</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSubstrate()
	 * @generated
	 * @ordered
	 */
	protected Substrate substrate = SUBSTRATE_EDEFAULT;

	/**
	 * The default value of the '{@link #getSound() <em>Sound</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSound()
	 * @generated
	 * @ordered
	 */
	protected static final Soundness SOUND_EDEFAULT = Soundness.UNRECORDED;

	/**
	 * The cached value of the '{@link #getSound() <em>Sound</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSound()
	 * @generated
	 * @ordered
	 */
	protected Soundness sound = SOUND_EDEFAULT;

	/**
	 * The default value of the '{@link #getTexture() <em>Texture</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTexture()
	 * @generated
	 * @ordered
	 */
	protected static final Boolean TEXTURE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getTexture() <em>Texture</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTexture()
	 * @generated
	 * @ordered
	 */
	protected Boolean texture = TEXTURE_EDEFAULT;

	/**
	 * The default value of the '{@link #getDisturb() <em>Disturb</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDisturb()
	 * @generated
	 * @ordered
	 */
	protected static final Boolean DISTURB_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getDisturb() <em>Disturb</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDisturb()
	 * @generated
	 * @ordered
	 */
	protected Boolean disturb = DISTURB_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected FinishImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return WainscribePackage.Literals.FINISH;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public SurfaceZone getZone() {
		return zone;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetZone(SurfaceZone newZone, NotificationChain msgs) {
		SurfaceZone oldZone = zone;
		zone = newZone;
		if (eNotificationRequired()) {
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, WainscribePackage.FINISH__ZONE, oldZone, newZone);
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
	public void setZone(SurfaceZone newZone) {
		if (newZone != zone) {
			NotificationChain msgs = null;
			if (zone != null)
				msgs = ((InternalEObject)zone).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - WainscribePackage.FINISH__ZONE, null, msgs);
			if (newZone != null)
				msgs = ((InternalEObject)newZone).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - WainscribePackage.FINISH__ZONE, null, msgs);
			msgs = basicSetZone(newZone, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.FINISH__ZONE, newZone, newZone));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public GlossLevel getGloss() {
		return gloss;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setGloss(GlossLevel newGloss) {
		GlossLevel oldGloss = gloss;
		gloss = newGloss == null ? GLOSS_EDEFAULT : newGloss;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.FINISH__GLOSS, oldGloss, gloss));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Binder getBinder() {
		return binder;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBinder(Binder newBinder) {
		Binder oldBinder = binder;
		binder = newBinder == null ? BINDER_EDEFAULT : newBinder;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.FINISH__BINDER, oldBinder, binder));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Substrate getSubstrate() {
		return substrate;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSubstrate(Substrate newSubstrate) {
		Substrate oldSubstrate = substrate;
		substrate = newSubstrate == null ? SUBSTRATE_EDEFAULT : newSubstrate;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.FINISH__SUBSTRATE, oldSubstrate, substrate));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Soundness getSound() {
		return sound;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSound(Soundness newSound) {
		Soundness oldSound = sound;
		sound = newSound == null ? SOUND_EDEFAULT : newSound;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.FINISH__SOUND, oldSound, sound));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Boolean getTexture() {
		return texture;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTexture(Boolean newTexture) {
		Boolean oldTexture = texture;
		texture = newTexture;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.FINISH__TEXTURE, oldTexture, texture));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Boolean getDisturb() {
		return disturb;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDisturb(Boolean newDisturb) {
		Boolean oldDisturb = disturb;
		disturb = newDisturb;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.FINISH__DISTURB, oldDisturb, disturb));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case WainscribePackage.FINISH__ZONE:
				return basicSetZone(null, msgs);
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
			case WainscribePackage.FINISH__ZONE:
				return getZone();
			case WainscribePackage.FINISH__GLOSS:
				return getGloss();
			case WainscribePackage.FINISH__BINDER:
				return getBinder();
			case WainscribePackage.FINISH__SUBSTRATE:
				return getSubstrate();
			case WainscribePackage.FINISH__SOUND:
				return getSound();
			case WainscribePackage.FINISH__TEXTURE:
				return getTexture();
			case WainscribePackage.FINISH__DISTURB:
				return getDisturb();
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
			case WainscribePackage.FINISH__ZONE:
				setZone((SurfaceZone)newValue);
				return;
			case WainscribePackage.FINISH__GLOSS:
				setGloss((GlossLevel)newValue);
				return;
			case WainscribePackage.FINISH__BINDER:
				setBinder((Binder)newValue);
				return;
			case WainscribePackage.FINISH__SUBSTRATE:
				setSubstrate((Substrate)newValue);
				return;
			case WainscribePackage.FINISH__SOUND:
				setSound((Soundness)newValue);
				return;
			case WainscribePackage.FINISH__TEXTURE:
				setTexture((Boolean)newValue);
				return;
			case WainscribePackage.FINISH__DISTURB:
				setDisturb((Boolean)newValue);
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
			case WainscribePackage.FINISH__ZONE:
				setZone((SurfaceZone)null);
				return;
			case WainscribePackage.FINISH__GLOSS:
				setGloss(GLOSS_EDEFAULT);
				return;
			case WainscribePackage.FINISH__BINDER:
				setBinder(BINDER_EDEFAULT);
				return;
			case WainscribePackage.FINISH__SUBSTRATE:
				setSubstrate(SUBSTRATE_EDEFAULT);
				return;
			case WainscribePackage.FINISH__SOUND:
				setSound(SOUND_EDEFAULT);
				return;
			case WainscribePackage.FINISH__TEXTURE:
				setTexture(TEXTURE_EDEFAULT);
				return;
			case WainscribePackage.FINISH__DISTURB:
				setDisturb(DISTURB_EDEFAULT);
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
			case WainscribePackage.FINISH__ZONE:
				return zone != null;
			case WainscribePackage.FINISH__GLOSS:
				return gloss != GLOSS_EDEFAULT;
			case WainscribePackage.FINISH__BINDER:
				return binder != BINDER_EDEFAULT;
			case WainscribePackage.FINISH__SUBSTRATE:
				return substrate != SUBSTRATE_EDEFAULT;
			case WainscribePackage.FINISH__SOUND:
				return sound != SOUND_EDEFAULT;
			case WainscribePackage.FINISH__TEXTURE:
				return TEXTURE_EDEFAULT == null ? texture != null : !TEXTURE_EDEFAULT.equals(texture);
			case WainscribePackage.FINISH__DISTURB:
				return DISTURB_EDEFAULT == null ? disturb != null : !DISTURB_EDEFAULT.equals(disturb);
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
		result.append(" (gloss: ");
		result.append(gloss);
		result.append(", binder: ");
		result.append(binder);
		result.append(", substrate: ");
		result.append(substrate);
		result.append(", sound: ");
		result.append(sound);
		result.append(", texture: ");
		result.append(texture);
		result.append(", disturb: ");
		result.append(disturb);
		result.append(')');
		return result.toString();
	}

} //FinishImpl
