/**
 * SPDX-License-Identifier: EPL-2.0
 */
package wainscribe.model;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Finish</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A coating that is there now.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link wainscribe.model.Finish#getZone <em>Zone</em>}</li>
 *   <li>{@link wainscribe.model.Finish#getGloss <em>Gloss</em>}</li>
 *   <li>{@link wainscribe.model.Finish#getBinder <em>Binder</em>}</li>
 *   <li>{@link wainscribe.model.Finish#getSubstrate <em>Substrate</em>}</li>
 *   <li>{@link wainscribe.model.Finish#getSound <em>Sound</em>}</li>
 *   <li>{@link wainscribe.model.Finish#getTexture <em>Texture</em>}</li>
 *   <li>{@link wainscribe.model.Finish#getDisturb <em>Disturb</em>}</li>
 * </ul>
 *
 * @see wainscribe.model.WainscribePackage#getFinish()
 * @model
 * @generated
 */
public interface Finish extends Element {
	/**
	 * Returns the value of the '<em><b>Zone</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Where it is.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Zone</em>' containment reference.
	 * @see #setZone(SurfaceZone)
	 * @see wainscribe.model.WainscribePackage#getFinish_Zone()
	 * @model containment="true"
	 * @generated
	 */
	SurfaceZone getZone();

	/**
	 * Sets the value of the '{@link wainscribe.model.Finish#getZone <em>Zone</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Zone</em>' containment reference.
	 * @see #getZone()
	 * @generated
	 */
	void setZone(SurfaceZone value);

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
	 * @see wainscribe.model.WainscribePackage#getFinish_Gloss()
	 * @model
	 * @generated
	 */
	GlossLevel getGloss();

	/**
	 * Sets the value of the '{@link wainscribe.model.Finish#getGloss <em>Gloss</em>}' attribute.
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
	 * @see wainscribe.model.WainscribePackage#getFinish_Binder()
	 * @model
	 * @generated
	 */
	Binder getBinder();

	/**
	 * Sets the value of the '{@link wainscribe.model.Finish#getBinder <em>Binder</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Binder</em>' attribute.
	 * @see wainscribe.model.Binder
	 * @see #getBinder()
	 * @generated
	 */
	void setBinder(Binder value);

	/**
	 * Returns the value of the '<em><b>Substrate</b></em>' attribute.
	 * The literals are from the enumeration {@link wainscribe.model.Substrate}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What it lies on.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Substrate</em>' attribute.
	 * @see wainscribe.model.Substrate
	 * @see #setSubstrate(Substrate)
	 * @see wainscribe.model.WainscribePackage#getFinish_Substrate()
	 * @model
	 * @generated
	 */
	Substrate getSubstrate();

	/**
	 * Sets the value of the '{@link wainscribe.model.Finish#getSubstrate <em>Substrate</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Substrate</em>' attribute.
	 * @see wainscribe.model.Substrate
	 * @see #getSubstrate()
	 * @generated
	 */
	void setSubstrate(Substrate value);

	/**
	 * Returns the value of the '<em><b>Sound</b></em>' attribute.
	 * The literals are from the enumeration {@link wainscribe.model.Soundness}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Whether it holds.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Sound</em>' attribute.
	 * @see wainscribe.model.Soundness
	 * @see #setSound(Soundness)
	 * @see wainscribe.model.WainscribePackage#getFinish_Sound()
	 * @model
	 * @generated
	 */
	Soundness getSound();

	/**
	 * Sets the value of the '{@link wainscribe.model.Finish#getSound <em>Sound</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Sound</em>' attribute.
	 * @see wainscribe.model.Soundness
	 * @see #getSound()
	 * @generated
	 */
	void setSound(Soundness value);

	/**
	 * Returns the value of the '<em><b>Texture</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A textured coat. Null: not recorded.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Texture</em>' attribute.
	 * @see #setTexture(Boolean)
	 * @see wainscribe.model.WainscribePackage#getFinish_Texture()
	 * @model
	 * @generated
	 */
	Boolean getTexture();

	/**
	 * Sets the value of the '{@link wainscribe.model.Finish#getTexture <em>Texture</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Texture</em>' attribute.
	 * @see #getTexture()
	 * @generated
	 */
	void setTexture(Boolean value);

	/**
	 * Returns the value of the '<em><b>Disturb</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The work will sand, scrape or cut it. Null: not said.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Disturb</em>' attribute.
	 * @see #setDisturb(Boolean)
	 * @see wainscribe.model.WainscribePackage#getFinish_Disturb()
	 * @model
	 * @generated
	 */
	Boolean getDisturb();

	/**
	 * Sets the value of the '{@link wainscribe.model.Finish#getDisturb <em>Disturb</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Disturb</em>' attribute.
	 * @see #getDisturb()
	 * @generated
	 */
	void setDisturb(Boolean value);

} // Finish
