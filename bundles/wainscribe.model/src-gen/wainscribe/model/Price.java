/**
 * SPDX-License-Identifier: EPL-2.0
 */
package wainscribe.model;

import java.math.BigDecimal;

import wainscribe.model.length.Length;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Price</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * What one thing costs to buy. name is how the shop calls it, null for the item's own.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link wainscribe.model.Price#getItem <em>Item</em>}</li>
 *   <li>{@link wainscribe.model.Price#getUnit <em>Unit</em>}</li>
 *   <li>{@link wainscribe.model.Price#getPackLength <em>Pack Length</em>}</li>
 *   <li>{@link wainscribe.model.Price#getPack <em>Pack</em>}</li>
 *   <li>{@link wainscribe.model.Price#getAmount <em>Amount</em>}</li>
 * </ul>
 *
 * @see wainscribe.model.WainscribePackage#getPrice()
 * @model
 * @generated
 */
public interface Price extends Element {
	/**
	 * Returns the value of the '<em><b>Item</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What it is: the id of a profile, the name of a paint, or the key of a quantity.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Item</em>' attribute.
	 * @see #setItem(String)
	 * @see wainscribe.model.WainscribePackage#getPrice_Item()
	 * @model
	 * @generated
	 */
	String getItem();

	/**
	 * Sets the value of the '{@link wainscribe.model.Price#getItem <em>Item</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Item</em>' attribute.
	 * @see #getItem()
	 * @generated
	 */
	void setItem(String value);

	/**
	 * Returns the value of the '<em><b>Unit</b></em>' attribute.
	 * The literals are from the enumeration {@link wainscribe.model.PriceUnit}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What the price is for.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Unit</em>' attribute.
	 * @see wainscribe.model.PriceUnit
	 * @see #setUnit(PriceUnit)
	 * @see wainscribe.model.WainscribePackage#getPrice_Unit()
	 * @model
	 * @generated
	 */
	PriceUnit getUnit();

	/**
	 * Sets the value of the '{@link wainscribe.model.Price#getUnit <em>Unit</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Unit</em>' attribute.
	 * @see wainscribe.model.PriceUnit
	 * @see #getUnit()
	 * @generated
	 */
	void setUnit(PriceUnit value);

	/**
	 * Returns the value of the '<em><b>Pack Length</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Length of one stock length; null for other units.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Pack Length</em>' attribute.
	 * @see #setPackLength(Length)
	 * @see wainscribe.model.WainscribePackage#getPrice_PackLength()
	 * @model dataType="wainscribe.model.Length"
	 * @generated
	 */
	Length getPackLength();

	/**
	 * Sets the value of the '{@link wainscribe.model.Price#getPackLength <em>Pack Length</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Pack Length</em>' attribute.
	 * @see #getPackLength()
	 * @generated
	 */
	void setPackLength(Length value);

	/**
	 * Returns the value of the '<em><b>Pack</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How much one pack holds, in its unit. Null: one.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Pack</em>' attribute.
	 * @see #setPack(BigDecimal)
	 * @see wainscribe.model.WainscribePackage#getPrice_Pack()
	 * @model
	 * @generated
	 */
	BigDecimal getPack();

	/**
	 * Sets the value of the '{@link wainscribe.model.Price#getPack <em>Pack</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Pack</em>' attribute.
	 * @see #getPack()
	 * @generated
	 */
	void setPack(BigDecimal value);

	/**
	 * Returns the value of the '<em><b>Amount</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Price of one pack in the home's currency, before tax.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Amount</em>' attribute.
	 * @see #setAmount(BigDecimal)
	 * @see wainscribe.model.WainscribePackage#getPrice_Amount()
	 * @model
	 * @generated
	 */
	BigDecimal getAmount();

	/**
	 * Sets the value of the '{@link wainscribe.model.Price#getAmount <em>Amount</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Amount</em>' attribute.
	 * @see #getAmount()
	 * @generated
	 */
	void setAmount(BigDecimal value);

} // Price
