/**
 * SPDX-License-Identifier: EPL-2.0
 */
package wainscribe.model;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Paint</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A decision: the coating a zone is to take.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link wainscribe.model.Paint#getZone <em>Zone</em>}</li>
 *   <li>{@link wainscribe.model.Paint#getColour <em>Colour</em>}</li>
 *   <li>{@link wainscribe.model.Paint#getGloss <em>Gloss</em>}</li>
 *   <li>{@link wainscribe.model.Paint#getBinder <em>Binder</em>}</li>
 *   <li>{@link wainscribe.model.Paint#getScrub <em>Scrub</em>}</li>
 *   <li>{@link wainscribe.model.Paint#getMildew <em>Mildew</em>}</li>
 *   <li>{@link wainscribe.model.Paint#getCoats <em>Coats</em>}</li>
 *   <li>{@link wainscribe.model.Paint#getClean <em>Clean</em>}</li>
 *   <li>{@link wainscribe.model.Paint#getDegloss <em>Degloss</em>}</li>
 *   <li>{@link wainscribe.model.Paint#getPrimer <em>Primer</em>}</li>
 * </ul>
 *
 * @see wainscribe.model.WainscribePackage#getPaint()
 * @model
 * @generated
 */
public interface Paint extends Element {
	/**
	 * Returns the value of the '<em><b>Zone</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Where it goes.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Zone</em>' containment reference.
	 * @see #setZone(SurfaceZone)
	 * @see wainscribe.model.WainscribePackage#getPaint_Zone()
	 * @model containment="true"
	 * @generated
	 */
	SurfaceZone getZone();

	/**
	 * Sets the value of the '{@link wainscribe.model.Paint#getZone <em>Zone</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Zone</em>' containment reference.
	 * @see #getZone()
	 * @generated
	 */
	void setZone(SurfaceZone value);

	/**
	 * Returns the value of the '<em><b>Colour</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The colour as #rrggbb (IEC 61966-2-1 sRGB). Null: not chosen.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Colour</em>' attribute.
	 * @see #setColour(String)
	 * @see wainscribe.model.WainscribePackage#getPaint_Colour()
	 * @model
	 * @generated
	 */
	String getColour();

	/**
	 * Sets the value of the '{@link wainscribe.model.Paint#getColour <em>Colour</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Colour</em>' attribute.
	 * @see #getColour()
	 * @generated
	 */
	void setColour(String value);

	/**
	 * Returns the value of the '<em><b>Gloss</b></em>' attribute.
	 * The literals are from the enumeration {@link wainscribe.model.GlossLevel}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Gloss level.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Gloss</em>' attribute.
	 * @see wainscribe.model.GlossLevel
	 * @see #setGloss(GlossLevel)
	 * @see wainscribe.model.WainscribePackage#getPaint_Gloss()
	 * @model
	 * @generated
	 */
	GlossLevel getGloss();

	/**
	 * Sets the value of the '{@link wainscribe.model.Paint#getGloss <em>Gloss</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Gloss</em>' attribute.
	 * @see wainscribe.model.GlossLevel
	 * @see #getGloss()
	 * @generated
	 */
	void setGloss(GlossLevel value);

	/**
	 * Returns the value of the '<em><b>Binder</b></em>' attribute.
	 * The literals are from the enumeration {@link wainscribe.model.Binder}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What binds it.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Binder</em>' attribute.
	 * @see wainscribe.model.Binder
	 * @see #setBinder(Binder)
	 * @see wainscribe.model.WainscribePackage#getPaint_Binder()
	 * @model
	 * @generated
	 */
	Binder getBinder();

	/**
	 * Sets the value of the '{@link wainscribe.model.Paint#getBinder <em>Binder</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Binder</em>' attribute.
	 * @see wainscribe.model.Binder
	 * @see #getBinder()
	 * @generated
	 */
	void setBinder(Binder value);

	/**
	 * Returns the value of the '<em><b>Scrub</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Wet-scrub class 1 to 5 (EN 13300). Null: not known.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Scrub</em>' attribute.
	 * @see #setScrub(Integer)
	 * @see wainscribe.model.WainscribePackage#getPaint_Scrub()
	 * @model
	 * @generated
	 */
	Integer getScrub();

	/**
	 * Sets the value of the '{@link wainscribe.model.Paint#getScrub <em>Scrub</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Scrub</em>' attribute.
	 * @see #getScrub()
	 * @generated
	 */
	void setScrub(Integer value);

	/**
	 * Returns the value of the '<em><b>Mildew</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Tested against mildew. Null: not known.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Mildew</em>' attribute.
	 * @see #setMildew(Boolean)
	 * @see wainscribe.model.WainscribePackage#getPaint_Mildew()
	 * @model
	 * @generated
	 */
	Boolean getMildew();

	/**
	 * Sets the value of the '{@link wainscribe.model.Paint#getMildew <em>Mildew</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Mildew</em>' attribute.
	 * @see #getMildew()
	 * @generated
	 */
	void setMildew(Boolean value);

	/**
	 * Returns the value of the '<em><b>Coats</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Number of coats. Null: two.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Coats</em>' attribute.
	 * @see #setCoats(Integer)
	 * @see wainscribe.model.WainscribePackage#getPaint_Coats()
	 * @model
	 * @generated
	 */
	Integer getCoats();

	/**
	 * Sets the value of the '{@link wainscribe.model.Paint#getCoats <em>Coats</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Coats</em>' attribute.
	 * @see #getCoats()
	 * @generated
	 */
	void setCoats(Integer value);

	/**
	 * Returns the value of the '<em><b>Clean</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The surface is cleaned first. Null: not decided.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Clean</em>' attribute.
	 * @see #setClean(Boolean)
	 * @see wainscribe.model.WainscribePackage#getPaint_Clean()
	 * @model
	 * @generated
	 */
	Boolean getClean();

	/**
	 * Sets the value of the '{@link wainscribe.model.Paint#getClean <em>Clean</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Clean</em>' attribute.
	 * @see #getClean()
	 * @generated
	 */
	void setClean(Boolean value);

	/**
	 * Returns the value of the '<em><b>Degloss</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The surface is dulled first. Null: not decided.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Degloss</em>' attribute.
	 * @see #setDegloss(Boolean)
	 * @see wainscribe.model.WainscribePackage#getPaint_Degloss()
	 * @model
	 * @generated
	 */
	Boolean getDegloss();

	/**
	 * Sets the value of the '{@link wainscribe.model.Paint#getDegloss <em>Degloss</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Degloss</em>' attribute.
	 * @see #getDegloss()
	 * @generated
	 */
	void setDegloss(Boolean value);

	/**
	 * Returns the value of the '<em><b>Primer</b></em>' attribute.
	 * The literals are from the enumeration {@link wainscribe.model.Primer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Primer under it.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Primer</em>' attribute.
	 * @see wainscribe.model.Primer
	 * @see #setPrimer(Primer)
	 * @see wainscribe.model.WainscribePackage#getPaint_Primer()
	 * @model
	 * @generated
	 */
	Primer getPrimer();

	/**
	 * Sets the value of the '{@link wainscribe.model.Paint#getPrimer <em>Primer</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Primer</em>' attribute.
	 * @see wainscribe.model.Primer
	 * @see #getPrimer()
	 * @generated
	 */
	void setPrimer(Primer value);

} // Paint
