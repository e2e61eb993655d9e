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
import wainscribe.model.GlossLevel;
import wainscribe.model.Paint;
import wainscribe.model.Primer;
import wainscribe.model.SurfaceZone;
import wainscribe.model.WainscribePackage;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Paint</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link wainscribe.model.impl.PaintImpl#getZone <em>Zone</em>}</li>
 *   <li>{@link wainscribe.model.impl.PaintImpl#getColour <em>Colour</em>}</li>
 *   <li>{@link wainscribe.model.impl.PaintImpl#getGloss <em>Gloss</em>}</li>
 *   <li>{@link wainscribe.model.impl.PaintImpl#getBinder <em>Binder</em>}</li>
 *   <li>{@link wainscribe.model.impl.PaintImpl#getScrub <em>Scrub</em>}</li>
 *   <li>{@link wainscribe.model.impl.PaintImpl#getMildew <em>Mildew</em>}</li>
 *   <li>{@link wainscribe.model.impl.PaintImpl#getCoats <em>Coats</em>}</li>
 *   <li>{@link wainscribe.model.impl.PaintImpl#getClean <em>Clean</em>}</li>
 *   <li>{@link wainscribe.model.impl.PaintImpl#getDegloss <em>Degloss</em>}</li>
 *   <li>{@link wainscribe.model.impl.PaintImpl#getPrimer <em>Primer</em>}</li>
 * </ul>
 *
 * @generated
 */
public class PaintImpl extends ElementImpl implements Paint {
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
	 * The default value of the '{@link #getColour() <em>Colour</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getColour()
	 * @generated
	 * @ordered
	 */
	protected static final String COLOUR_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getColour() <em>Colour</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getColour()
	 * @generated
	 * @ordered
	 */
	protected String colour = COLOUR_EDEFAULT;

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
	 * The default value of the '{@link #getScrub() <em>Scrub</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getScrub()
	 * @generated
	 * @ordered
	 */
	protected static final Integer SCRUB_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getScrub() <em>Scrub</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getScrub()
	 * @generated
	 * @ordered
	 */
	protected Integer scrub = SCRUB_EDEFAULT;

	/**
	 * The default value of the '{@link #getMildew() <em>Mildew</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMildew()
	 * @generated
	 * @ordered
	 */
	protected static final Boolean MILDEW_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMildew() <em>Mildew</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMildew()
	 * @generated
	 * @ordered
	 */
	protected Boolean mildew = MILDEW_EDEFAULT;

	/**
	 * The default value of the '{@link #getCoats() <em>Coats</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCoats()
	 * @generated
	 * @ordered
	 */
	protected static final Integer COATS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCoats() <em>Coats</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCoats()
	 * @generated
	 * @ordered
	 */
	protected Integer coats = COATS_EDEFAULT;

	/**
	 * The default value of the '{@link #getClean() <em>Clean</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getClean()
	 * @generated
	 * @ordered
	 */
	protected static final Boolean CLEAN_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getClean() <em>Clean</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getClean()
	 * @generated
	 * @ordered
	 */
	protected Boolean clean = CLEAN_EDEFAULT;

	/**
	 * The default value of the '{@link #getDegloss() <em>Degloss</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDegloss()
	 * @generated
	 * @ordered
	 */
	protected static final Boolean DEGLOSS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getDegloss() <em>Degloss</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDegloss()
	 * @generated
	 * @ordered
	 */
	protected Boolean degloss = DEGLOSS_EDEFAULT;

	/**
	 * The default value of the '{@link #getPrimer() <em>Primer</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPrimer()
	 * @generated
	 * @ordered
	 */
	protected static final Primer PRIMER_EDEFAULT = Primer.UNRECORDED;

	/**
	 * The cached value of the '{@link #getPrimer() <em>Primer</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPrimer()
	 * @generated
	 * @ordered
	 */
	protected Primer primer = PRIMER_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected PaintImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return WainscribePackage.Literals.PAINT;
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
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, WainscribePackage.PAINT__ZONE, oldZone, newZone);
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
				msgs = ((InternalEObject)zone).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - WainscribePackage.PAINT__ZONE, null, msgs);
			if (newZone != null)
				msgs = ((InternalEObject)newZone).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - WainscribePackage.PAINT__ZONE, null, msgs);
			msgs = basicSetZone(newZone, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.PAINT__ZONE, newZone, newZone));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getColour() {
		return colour;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setColour(String newColour) {
		String oldColour = colour;
		colour = newColour;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.PAINT__COLOUR, oldColour, colour));
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
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.PAINT__GLOSS, oldGloss, gloss));
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
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.PAINT__BINDER, oldBinder, binder));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Integer getScrub() {
		return scrub;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setScrub(Integer newScrub) {
		Integer oldScrub = scrub;
		scrub = newScrub;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.PAINT__SCRUB, oldScrub, scrub));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Boolean getMildew() {
		return mildew;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMildew(Boolean newMildew) {
		Boolean oldMildew = mildew;
		mildew = newMildew;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.PAINT__MILDEW, oldMildew, mildew));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Integer getCoats() {
		return coats;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCoats(Integer newCoats) {
		Integer oldCoats = coats;
		coats = newCoats;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.PAINT__COATS, oldCoats, coats));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Boolean getClean() {
		return clean;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setClean(Boolean newClean) {
		Boolean oldClean = clean;
		clean = newClean;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.PAINT__CLEAN, oldClean, clean));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Boolean getDegloss() {
		return degloss;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDegloss(Boolean newDegloss) {
		Boolean oldDegloss = degloss;
		degloss = newDegloss;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.PAINT__DEGLOSS, oldDegloss, degloss));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Primer getPrimer() {
		return primer;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPrimer(Primer newPrimer) {
		Primer oldPrimer = primer;
		primer = newPrimer == null ? PRIMER_EDEFAULT : newPrimer;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, WainscribePackage.PAINT__PRIMER, oldPrimer, primer));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case WainscribePackage.PAINT__ZONE:
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
			case WainscribePackage.PAINT__ZONE:
				return getZone();
			case WainscribePackage.PAINT__COLOUR:
				return getColour();
			case WainscribePackage.PAINT__GLOSS:
				return getGloss();
			case WainscribePackage.PAINT__BINDER:
				return getBinder();
			case WainscribePackage.PAINT__SCRUB:
				return getScrub();
			case WainscribePackage.PAINT__MILDEW:
				return getMildew();
			case WainscribePackage.PAINT__COATS:
				return getCoats();
			case WainscribePackage.PAINT__CLEAN:
				return getClean();
			case WainscribePackage.PAINT__DEGLOSS:
				return getDegloss();
			case WainscribePackage.PAINT__PRIMER:
				return getPrimer();
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
			case WainscribePackage.PAINT__ZONE:
				setZone((SurfaceZone)newValue);
				return;
			case WainscribePackage.PAINT__COLOUR:
				setColour((String)newValue);
				return;
			case WainscribePackage.PAINT__GLOSS:
				setGloss((GlossLevel)newValue);
				return;
			case WainscribePackage.PAINT__BINDER:
				setBinder((Binder)newValue);
				return;
			case WainscribePackage.PAINT__SCRUB:
				setScrub((Integer)newValue);
				return;
			case WainscribePackage.PAINT__MILDEW:
				setMildew((Boolean)newValue);
				return;
			case WainscribePackage.PAINT__COATS:
				setCoats((Integer)newValue);
				return;
			case WainscribePackage.PAINT__CLEAN:
				setClean((Boolean)newValue);
				return;
			case WainscribePackage.PAINT__DEGLOSS:
				setDegloss((Boolean)newValue);
				return;
			case WainscribePackage.PAINT__PRIMER:
				setPrimer((Primer)newValue);
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
			case WainscribePackage.PAINT__ZONE:
				setZone((SurfaceZone)null);
				return;
			case WainscribePackage.PAINT__COLOUR:
				setColour(COLOUR_EDEFAULT);
				return;
			case WainscribePackage.PAINT__GLOSS:
				setGloss(GLOSS_EDEFAULT);
				return;
			case WainscribePackage.PAINT__BINDER:
				setBinder(BINDER_EDEFAULT);
				return;
			case WainscribePackage.PAINT__SCRUB:
				setScrub(SCRUB_EDEFAULT);
				return;
			case WainscribePackage.PAINT__MILDEW:
				setMildew(MILDEW_EDEFAULT);
				return;
			case WainscribePackage.PAINT__COATS:
				setCoats(COATS_EDEFAULT);
				return;
			case WainscribePackage.PAINT__CLEAN:
				setClean(CLEAN_EDEFAULT);
				return;
			case WainscribePackage.PAINT__DEGLOSS:
				setDegloss(DEGLOSS_EDEFAULT);
				return;
			case WainscribePackage.PAINT__PRIMER:
				setPrimer(PRIMER_EDEFAULT);
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
			case WainscribePackage.PAINT__ZONE:
				return zone != null;
			case WainscribePackage.PAINT__COLOUR:
				return COLOUR_EDEFAULT == null ? colour != null : !COLOUR_EDEFAULT.equals(colour);
			case WainscribePackage.PAINT__GLOSS:
				return gloss != GLOSS_EDEFAULT;
			case WainscribePackage.PAINT__BINDER:
				return binder != BINDER_EDEFAULT;
			case WainscribePackage.PAINT__SCRUB:
				return SCRUB_EDEFAULT == null ? scrub != null : !SCRUB_EDEFAULT.equals(scrub);
			case WainscribePackage.PAINT__MILDEW:
				return MILDEW_EDEFAULT == null ? mildew != null : !MILDEW_EDEFAULT.equals(mildew);
			case WainscribePackage.PAINT__COATS:
				return COATS_EDEFAULT == null ? coats != null : !COATS_EDEFAULT.equals(coats);
			case WainscribePackage.PAINT__CLEAN:
				return CLEAN_EDEFAULT == null ? clean != null : !CLEAN_EDEFAULT.equals(clean);
			case WainscribePackage.PAINT__DEGLOSS:
				return DEGLOSS_EDEFAULT == null ? degloss != null : !DEGLOSS_EDEFAULT.equals(degloss);
			case WainscribePackage.PAINT__PRIMER:
				return primer != PRIMER_EDEFAULT;
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
		result.append(" (colour: ");
		result.append(colour);
		result.append(", gloss: ");
		result.append(gloss);
		result.append(", binder: ");
		result.append(binder);
		result.append(", scrub: ");
		result.append(scrub);
		result.append(", mildew: ");
		result.append(mildew);
		result.append(", coats: ");
		result.append(coats);
		result.append(", clean: ");
		result.append(clean);
		result.append(", degloss: ");
		result.append(degloss);
		result.append(", primer: ");
		result.append(primer);
		result.append(')');
		return result.toString();
	}

} //PaintImpl
