/**
 * SPDX-License-Identifier: EPL-2.0
 */
package wainscribe.model;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

import org.eclipse.emf.common.util.Enumerator;

/**
 * <!-- begin-user-doc -->
 * A representation of the literals of the enumeration '<em><b>Price Unit</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * <!-- begin-model-doc -->
 * What a price is for.
 * <!-- end-model-doc -->
 * @see wainscribe.model.WainscribePackage#getPriceUnit()
 * @model
 * @generated
 */
public enum PriceUnit implements Enumerator {
	/**
	 * The '<em><b>LENGTH</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * One stock length; its length in packLength.
	 * <!-- end-model-doc -->
	 * @see #LENGTH_VALUE
	 * @generated
	 * @ordered
	 */
	LENGTH(0, "LENGTH", "length"),

	/**
	 * The '<em><b>LITRE</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * One can; litres in pack.
	 * <!-- end-model-doc -->
	 * @see #LITRE_VALUE
	 * @generated
	 * @ordered
	 */
	LITRE(1, "LITRE", "litre"),

	/**
	 * The '<em><b>EACH</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * One pack; pieces in pack.
	 * <!-- end-model-doc -->
	 * @see #EACH_VALUE
	 * @generated
	 * @ordered
	 */
	EACH(2, "EACH", "each"),

	/**
	 * The '<em><b>METRE</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Metres in pack.
	 * <!-- end-model-doc -->
	 * @see #METRE_VALUE
	 * @generated
	 * @ordered
	 */
	METRE(3, "METRE", "metre");

	/**
	 * The '<em><b>LENGTH</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * One stock length; its length in packLength.
	 * <!-- end-model-doc -->
	 * @see #LENGTH
	 * @model literal="length"
	 * @generated
	 * @ordered
	 */
	public static final int LENGTH_VALUE = 0;

	/**
	 * The '<em><b>LITRE</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * One can; litres in pack.
	 * <!-- end-model-doc -->
	 * @see #LITRE
	 * @model literal="litre"
	 * @generated
	 * @ordered
	 */
	public static final int LITRE_VALUE = 1;

	/**
	 * The '<em><b>EACH</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * One pack; pieces in pack.
	 * <!-- end-model-doc -->
	 * @see #EACH
	 * @model literal="each"
	 * @generated
	 * @ordered
	 */
	public static final int EACH_VALUE = 2;

	/**
	 * The '<em><b>METRE</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Metres in pack.
	 * <!-- end-model-doc -->
	 * @see #METRE
	 * @model literal="metre"
	 * @generated
	 * @ordered
	 */
	public static final int METRE_VALUE = 3;

	/**
	 * An array of all the '<em><b>Price Unit</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final PriceUnit[] VALUES_ARRAY =
		new PriceUnit[] {
			LENGTH,
			LITRE,
			EACH,
			METRE,
		};

	/**
	 * A public read-only list of all the '<em><b>Price Unit</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<PriceUnit> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Price Unit</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static PriceUnit get(String literal) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			PriceUnit result = VALUES_ARRAY[i];
			if (result.toString().equals(literal)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Price Unit</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static PriceUnit getByName(String name) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			PriceUnit result = VALUES_ARRAY[i];
			if (result.getName().equals(name)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Price Unit</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static PriceUnit get(int value) {
		switch (value) {
			case LENGTH_VALUE: return LENGTH;
			case LITRE_VALUE: return LITRE;
			case EACH_VALUE: return EACH;
			case METRE_VALUE: return METRE;
		}
		return null;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private final int value;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private final String name;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private final String literal;

	/**
	 * Only this class can construct instances.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private PriceUnit(int value, String name, String literal) {
		this.value = value;
		this.name = name;
		this.literal = literal;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int getValue() {
	  return value;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getName() {
	  return name;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getLiteral() {
	  return literal;
	}

	/**
	 * Returns the literal value of the enumerator, which is its string representation.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String toString() {
		return literal;
	}
	
} //PriceUnit
