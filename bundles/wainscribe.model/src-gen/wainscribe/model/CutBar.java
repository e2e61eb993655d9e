/**
 * SPDX-License-Identifier: EPL-2.0
 */
package wainscribe.model;

import java.math.BigDecimal;

import org.eclipse.emf.common.util.EList;

import wainscribe.model.length.Length;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Cut Bar</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A decision: a bar of an accepted cutting plan. name is the label of the offcut it was; null for a bar that is bought.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link wainscribe.model.CutBar#getProfile <em>Profile</em>}</li>
 *   <li>{@link wainscribe.model.CutBar#getMaterial <em>Material</em>}</li>
 *   <li>{@link wainscribe.model.CutBar#getLength <em>Length</em>}</li>
 *   <li>{@link wainscribe.model.CutBar#getPrice <em>Price</em>}</li>
 *   <li>{@link wainscribe.model.CutBar#getPieces <em>Pieces</em>}</li>
 * </ul>
 *
 * @see wainscribe.model.WainscribePackage#getCutBar()
 * @model
 * @generated
 */
public interface CutBar extends Element {
	/**
	 * Returns the value of the '<em><b>Profile</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What it is cut from, as in StoredOffcut.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Profile</em>' attribute.
	 * @see #setProfile(String)
	 * @see wainscribe.model.WainscribePackage#getCutBar_Profile()
	 * @model
	 * @generated
	 */
	String getProfile();

	/**
	 * Sets the value of the '{@link wainscribe.model.CutBar#getProfile <em>Profile</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Profile</em>' attribute.
	 * @see #getProfile()
	 * @generated
	 */
	void setProfile(String value);

	/**
	 * Returns the value of the '<em><b>Material</b></em>' attribute.
	 * The literals are from the enumeration {@link wainscribe.model.Material}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What it is made of.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Material</em>' attribute.
	 * @see wainscribe.model.Material
	 * @see #setMaterial(Material)
	 * @see wainscribe.model.WainscribePackage#getCutBar_Material()
	 * @model
	 * @generated
	 */
	Material getMaterial();

	/**
	 * Sets the value of the '{@link wainscribe.model.CutBar#getMaterial <em>Material</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Material</em>' attribute.
	 * @see wainscribe.model.Material
	 * @see #getMaterial()
	 * @generated
	 */
	void setMaterial(Material value);

	/**
	 * Returns the value of the '<em><b>Length</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Its whole length.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Length</em>' attribute.
	 * @see #setLength(Length)
	 * @see wainscribe.model.WainscribePackage#getCutBar_Length()
	 * @model dataType="wainscribe.model.Length"
	 * @generated
	 */
	Length getLength();

	/**
	 * Sets the value of the '{@link wainscribe.model.CutBar#getLength <em>Length</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Length</em>' attribute.
	 * @see #getLength()
	 * @generated
	 */
	void setLength(Length value);

	/**
	 * Returns the value of the '<em><b>Price</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What it cost when the plan was accepted, in the home's currency before tax. Null: no price was known.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Price</em>' attribute.
	 * @see #setPrice(BigDecimal)
	 * @see wainscribe.model.WainscribePackage#getCutBar_Price()
	 * @model
	 * @generated
	 */
	BigDecimal getPrice();

	/**
	 * Sets the value of the '{@link wainscribe.model.CutBar#getPrice <em>Price</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Price</em>' attribute.
	 * @see #getPrice()
	 * @generated
	 */
	void setPrice(BigDecimal value);

	/**
	 * Returns the value of the '<em><b>Pieces</b></em>' containment reference list.
	 * The list contents are of type {@link wainscribe.model.CutPiece}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The pieces in the order of cutting.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Pieces</em>' containment reference list.
	 * @see wainscribe.model.WainscribePackage#getCutBar_Pieces()
	 * @model containment="true"
	 * @generated
	 */
	EList<CutPiece> getPieces();

} // CutBar
