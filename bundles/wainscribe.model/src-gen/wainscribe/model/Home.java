/**
 * SPDX-License-Identifier: EPL-2.0
 */
package wainscribe.model;

import org.eclipse.emf.common.util.EList;

import wainscribe.model.length.Length;
import wainscribe.model.length.LengthUnit;

import wainscribe.model.measure.Measure;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Home</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * One client's project. Its rooms are the .room files beside it; name is the client label.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link wainscribe.model.Home#getFormatVersion <em>Format Version</em>}</li>
 *   <li>{@link wainscribe.model.Home#getUnits <em>Units</em>}</li>
 *   <li>{@link wainscribe.model.Home#getCountry <em>Country</em>}</li>
 *   <li>{@link wainscribe.model.Home#getBuilt <em>Built</em>}</li>
 *   <li>{@link wainscribe.model.Home#getCurrency <em>Currency</em>}</li>
 *   <li>{@link wainscribe.model.Home#getTax <em>Tax</em>}</li>
 *   <li>{@link wainscribe.model.Home#getRoomOrder <em>Room Order</em>}</li>
 *   <li>{@link wainscribe.model.Home#getBrief <em>Brief</em>}</li>
 *   <li>{@link wainscribe.model.Home#getPaints <em>Paints</em>}</li>
 *   <li>{@link wainscribe.model.Home#getPrices <em>Prices</em>}</li>
 *   <li>{@link wainscribe.model.Home#getKerf <em>Kerf</em>}</li>
 *   <li>{@link wainscribe.model.Home#getEndTrim <em>End Trim</em>}</li>
 *   <li>{@link wainscribe.model.Home#getShortestOffcut <em>Shortest Offcut</em>}</li>
 *   <li>{@link wainscribe.model.Home#getOffcuts <em>Offcuts</em>}</li>
 *   <li>{@link wainscribe.model.Home#getCutBars <em>Cut Bars</em>}</li>
 * </ul>
 *
 * @see wainscribe.model.WainscribePackage#getHome()
 * @model
 * @generated
 */
public interface Home extends Element {
	/**
	 * Returns the value of the '<em><b>Format Version</b></em>' attribute.
	 * The default value is <code>"1"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Version of the file format, 1 for this model.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Format Version</em>' attribute.
	 * @see #setFormatVersion(int)
	 * @see wainscribe.model.WainscribePackage#getHome_FormatVersion()
	 * @model default="1"
	 * @generated
	 */
	int getFormatVersion();

	/**
	 * Sets the value of the '{@link wainscribe.model.Home#getFormatVersion <em>Format Version</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Format Version</em>' attribute.
	 * @see #getFormatVersion()
	 * @generated
	 */
	void setFormatVersion(int value);

	/**
	 * Returns the value of the '<em><b>Units</b></em>' attribute.
	 * The default value is <code>"mm"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Unit in which the home is measured and drawn.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Units</em>' attribute.
	 * @see #setUnits(LengthUnit)
	 * @see wainscribe.model.WainscribePackage#getHome_Units()
	 * @model default="mm" dataType="wainscribe.model.LengthUnit"
	 * @generated
	 */
	LengthUnit getUnits();

	/**
	 * Sets the value of the '{@link wainscribe.model.Home#getUnits <em>Units</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Units</em>' attribute.
	 * @see #getUnits()
	 * @generated
	 */
	void setUnits(LengthUnit value);

	/**
	 * Returns the value of the '<em><b>Country</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Country code (US, UK, IE, CA ...): chooses rule profile and plate sizes. Null: not recorded.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Country</em>' attribute.
	 * @see #setCountry(String)
	 * @see wainscribe.model.WainscribePackage#getHome_Country()
	 * @model
	 * @generated
	 */
	String getCountry();

	/**
	 * Sets the value of the '{@link wainscribe.model.Home#getCountry <em>Country</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Country</em>' attribute.
	 * @see #getCountry()
	 * @generated
	 */
	void setCountry(String value);

	/**
	 * Returns the value of the '<em><b>Built</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Year the house was built. Null: not recorded, so old-house cautions apply.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Built</em>' attribute.
	 * @see #setBuilt(Integer)
	 * @see wainscribe.model.WainscribePackage#getHome_Built()
	 * @model
	 * @generated
	 */
	Integer getBuilt();

	/**
	 * Sets the value of the '{@link wainscribe.model.Home#getBuilt <em>Built</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Built</em>' attribute.
	 * @see #getBuilt()
	 * @generated
	 */
	void setBuilt(Integer value);

	/**
	 * Returns the value of the '<em><b>Currency</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * ISO 4217 code of all prices. Null: not recorded.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Currency</em>' attribute.
	 * @see #setCurrency(String)
	 * @see wainscribe.model.WainscribePackage#getHome_Currency()
	 * @model
	 * @generated
	 */
	String getCurrency();

	/**
	 * Sets the value of the '{@link wainscribe.model.Home#getCurrency <em>Currency</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Currency</em>' attribute.
	 * @see #getCurrency()
	 * @generated
	 */
	void setCurrency(String value);

	/**
	 * Returns the value of the '<em><b>Tax</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Sales tax added to prices, in per cent. Null: none recorded.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Tax</em>' attribute.
	 * @see #setTax(Measure)
	 * @see wainscribe.model.WainscribePackage#getHome_Tax()
	 * @model dataType="wainscribe.model.Measure"
	 * @generated
	 */
	Measure getTax();

	/**
	 * Sets the value of the '{@link wainscribe.model.Home#getTax <em>Tax</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Tax</em>' attribute.
	 * @see #getTax()
	 * @generated
	 */
	void setTax(Measure value);

	/**
	 * Returns the value of the '<em><b>Room Order</b></em>' attribute list.
	 * The list contents are of type {@link java.lang.String}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * File names of the rooms in the order of the survey.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Room Order</em>' attribute list.
	 * @see wainscribe.model.WainscribePackage#getHome_RoomOrder()
	 * @model
	 * @generated
	 */
	EList<String> getRoomOrder();

	/**
	 * Returns the value of the '<em><b>Brief</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Decisions for the whole home; a room's own brief wins. Null: none.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Brief</em>' containment reference.
	 * @see #setBrief(Brief)
	 * @see wainscribe.model.WainscribePackage#getHome_Brief()
	 * @model containment="true"
	 * @generated
	 */
	Brief getBrief();

	/**
	 * Sets the value of the '{@link wainscribe.model.Home#getBrief <em>Brief</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Brief</em>' containment reference.
	 * @see #getBrief()
	 * @generated
	 */
	void setBrief(Brief value);

	/**
	 * Returns the value of the '<em><b>Paints</b></em>' containment reference list.
	 * The list contents are of type {@link wainscribe.model.Paint}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Paints decided for the whole home; a room's own of the same surface wins.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Paints</em>' containment reference list.
	 * @see wainscribe.model.WainscribePackage#getHome_Paints()
	 * @model containment="true"
	 * @generated
	 */
	EList<Paint> getPaints();

	/**
	 * Returns the value of the '<em><b>Prices</b></em>' containment reference list.
	 * The list contents are of type {@link wainscribe.model.Price}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Prices of what has to be bought.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Prices</em>' containment reference list.
	 * @see wainscribe.model.WainscribePackage#getHome_Prices()
	 * @model containment="true"
	 * @generated
	 */
	EList<Price> getPrices();

	/**
	 * Returns the value of the '<em><b>Kerf</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Width of the saw cut. Null: the default of common practice.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Kerf</em>' attribute.
	 * @see #setKerf(Length)
	 * @see wainscribe.model.WainscribePackage#getHome_Kerf()
	 * @model dataType="wainscribe.model.Length"
	 * @generated
	 */
	Length getKerf();

	/**
	 * Sets the value of the '{@link wainscribe.model.Home#getKerf <em>Kerf</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Kerf</em>' attribute.
	 * @see #getKerf()
	 * @generated
	 */
	void setKerf(Length value);

	/**
	 * Returns the value of the '<em><b>End Trim</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What comes off every bar before the first piece, because its end is not sound. Null: the default of common practice.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>End Trim</em>' attribute.
	 * @see #setEndTrim(Length)
	 * @see wainscribe.model.WainscribePackage#getHome_EndTrim()
	 * @model dataType="wainscribe.model.Length"
	 * @generated
	 */
	Length getEndTrim();

	/**
	 * Sets the value of the '{@link wainscribe.model.Home#getEndTrim <em>End Trim</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>End Trim</em>' attribute.
	 * @see #getEndTrim()
	 * @generated
	 */
	void setEndTrim(Length value);

	/**
	 * Returns the value of the '<em><b>Shortest Offcut</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Shortest leftover worth keeping. Null: the default of common practice.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Shortest Offcut</em>' attribute.
	 * @see #setShortestOffcut(Length)
	 * @see wainscribe.model.WainscribePackage#getHome_ShortestOffcut()
	 * @model dataType="wainscribe.model.Length"
	 * @generated
	 */
	Length getShortestOffcut();

	/**
	 * Sets the value of the '{@link wainscribe.model.Home#getShortestOffcut <em>Shortest Offcut</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Shortest Offcut</em>' attribute.
	 * @see #getShortestOffcut()
	 * @generated
	 */
	void setShortestOffcut(Length value);

	/**
	 * Returns the value of the '<em><b>Offcuts</b></em>' containment reference list.
	 * The list contents are of type {@link wainscribe.model.StoredOffcut}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Leftovers that are there to be cut from.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Offcuts</em>' containment reference list.
	 * @see wainscribe.model.WainscribePackage#getHome_Offcuts()
	 * @model containment="true"
	 * @generated
	 */
	EList<StoredOffcut> getOffcuts();

	/**
	 * Returns the value of the '<em><b>Cut Bars</b></em>' containment reference list.
	 * The list contents are of type {@link wainscribe.model.CutBar}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Bars of the cutting plans that were accepted, in the order they were.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Cut Bars</em>' containment reference list.
	 * @see wainscribe.model.WainscribePackage#getHome_CutBars()
	 * @model containment="true"
	 * @generated
	 */
	EList<CutBar> getCutBars();

} // Home
