/**
 * SPDX-License-Identifier: EPL-2.0
 */
package wainscribe.model;

import wainscribe.model.length.Length;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Opening</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A door or window; the outline is the opening inside its jambs.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link wainscribe.model.Opening#getKind <em>Kind</em>}</li>
 *   <li>{@link wainscribe.model.Opening#getCasing <em>Casing</em>}</li>
 *   <li>{@link wainscribe.model.Opening#getCasingDepth <em>Casing Depth</em>}</li>
 *   <li>{@link wainscribe.model.Opening#getReveal <em>Reveal</em>}</li>
 *   <li>{@link wainscribe.model.Opening#getStool <em>Stool</em>}</li>
 *   <li>{@link wainscribe.model.Opening#getApron <em>Apron</em>}</li>
 *   <li>{@link wainscribe.model.Opening#getSwing <em>Swing</em>}</li>
 *   <li>{@link wainscribe.model.Opening#getEgress <em>Egress</em>}</li>
 *   <li>{@link wainscribe.model.Opening#getGlazing <em>Glazing</em>}</li>
 * </ul>
 *
 * @see wainscribe.model.WainscribePackage#getOpening()
 * @model
 * @generated
 */
public interface Opening extends Placed {
	/**
	 * Returns the value of the '<em><b>Kind</b></em>' attribute.
	 * The literals are from the enumeration {@link wainscribe.model.OpeningKind}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Door or window.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Kind</em>' attribute.
	 * @see wainscribe.model.OpeningKind
	 * @see #setKind(OpeningKind)
	 * @see wainscribe.model.WainscribePackage#getOpening_Kind()
	 * @model
	 * @generated
	 */
	OpeningKind getKind();

	/**
	 * Sets the value of the '{@link wainscribe.model.Opening#getKind <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Kind</em>' attribute.
	 * @see wainscribe.model.OpeningKind
	 * @see #getKind()
	 * @generated
	 */
	void setKind(OpeningKind value);

	/**
	 * Returns the value of the '<em><b>Casing</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Face width of the casing. Null: not measured, taken as none.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Casing</em>' attribute.
	 * @see #setCasing(Length)
	 * @see wainscribe.model.WainscribePackage#getOpening_Casing()
	 * @model dataType="wainscribe.model.Length"
	 * @generated
	 */
	Length getCasing();

	/**
	 * Sets the value of the '{@link wainscribe.model.Opening#getCasing <em>Casing</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Casing</em>' attribute.
	 * @see #getCasing()
	 * @generated
	 */
	void setCasing(Length value);

	/**
	 * Returns the value of the '<em><b>Casing Depth</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Projection of the casing from the wall face. Null: not measured.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Casing Depth</em>' attribute.
	 * @see #setCasingDepth(Length)
	 * @see wainscribe.model.WainscribePackage#getOpening_CasingDepth()
	 * @model dataType="wainscribe.model.Length"
	 * @generated
	 */
	Length getCasingDepth();

	/**
	 * Sets the value of the '{@link wainscribe.model.Opening#getCasingDepth <em>Casing Depth</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Casing Depth</em>' attribute.
	 * @see #getCasingDepth()
	 * @generated
	 */
	void setCasingDepth(Length value);

	/**
	 * Returns the value of the '<em><b>Reveal</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Jamb edge left showing beside the casing. Null: none.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Reveal</em>' attribute.
	 * @see #setReveal(Length)
	 * @see wainscribe.model.WainscribePackage#getOpening_Reveal()
	 * @model dataType="wainscribe.model.Length"
	 * @generated
	 */
	Length getReveal();

	/**
	 * Sets the value of the '{@link wainscribe.model.Opening#getReveal <em>Reveal</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Reveal</em>' attribute.
	 * @see #getReveal()
	 * @generated
	 */
	void setReveal(Length value);

	/**
	 * Returns the value of the '<em><b>Stool</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Projection of the window stool. Null: none.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Stool</em>' attribute.
	 * @see #setStool(Length)
	 * @see wainscribe.model.WainscribePackage#getOpening_Stool()
	 * @model dataType="wainscribe.model.Length"
	 * @generated
	 */
	Length getStool();

	/**
	 * Sets the value of the '{@link wainscribe.model.Opening#getStool <em>Stool</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Stool</em>' attribute.
	 * @see #getStool()
	 * @generated
	 */
	void setStool(Length value);

	/**
	 * Returns the value of the '<em><b>Apron</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How far the apron reaches below the opening. Null: as the casing.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Apron</em>' attribute.
	 * @see #setApron(Length)
	 * @see wainscribe.model.WainscribePackage#getOpening_Apron()
	 * @model dataType="wainscribe.model.Length"
	 * @generated
	 */
	Length getApron();

	/**
	 * Sets the value of the '{@link wainscribe.model.Opening#getApron <em>Apron</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Apron</em>' attribute.
	 * @see #getApron()
	 * @generated
	 */
	void setApron(Length value);

	/**
	 * Returns the value of the '<em><b>Swing</b></em>' attribute.
	 * The literals are from the enumeration {@link wainscribe.model.Swing}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How the leaf moves.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Swing</em>' attribute.
	 * @see wainscribe.model.Swing
	 * @see #setSwing(Swing)
	 * @see wainscribe.model.WainscribePackage#getOpening_Swing()
	 * @model
	 * @generated
	 */
	Swing getSwing();

	/**
	 * Sets the value of the '{@link wainscribe.model.Opening#getSwing <em>Swing</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Swing</em>' attribute.
	 * @see wainscribe.model.Swing
	 * @see #getSwing()
	 * @generated
	 */
	void setSwing(Swing value);

	/**
	 * Returns the value of the '<em><b>Egress</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * An escape window or door. Null: not recorded.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Egress</em>' attribute.
	 * @see #setEgress(Boolean)
	 * @see wainscribe.model.WainscribePackage#getOpening_Egress()
	 * @model
	 * @generated
	 */
	Boolean getEgress();

	/**
	 * Sets the value of the '{@link wainscribe.model.Opening#getEgress <em>Egress</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Egress</em>' attribute.
	 * @see #getEgress()
	 * @generated
	 */
	void setEgress(Boolean value);

	/**
	 * Returns the value of the '<em><b>Glazing</b></em>' attribute.
	 * The literals are from the enumeration {@link wainscribe.model.Glazing}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Kind of glass.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Glazing</em>' attribute.
	 * @see wainscribe.model.Glazing
	 * @see #setGlazing(Glazing)
	 * @see wainscribe.model.WainscribePackage#getOpening_Glazing()
	 * @model
	 * @generated
	 */
	Glazing getGlazing();

	/**
	 * Sets the value of the '{@link wainscribe.model.Opening#getGlazing <em>Glazing</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Glazing</em>' attribute.
	 * @see wainscribe.model.Glazing
	 * @see #getGlazing()
	 * @generated
	 */
	void setGlazing(Glazing value);

} // Opening
