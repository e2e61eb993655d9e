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
 * A representation of the literals of the enumeration '<em><b>Trim Type</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * <!-- begin-model-doc -->
 * What an existing moulding is.
 * <!-- end-model-doc -->
 * @see wainscribe.model.WainscribePackage#getTrimType()
 * @model
 * @generated
 */
public enum TrimType implements Enumerator {
	/**
	 * The '<em><b>BASE</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #BASE_VALUE
	 * @generated
	 * @ordered
	 */
	BASE(0, "BASE", "base"),

	/**
	 * The '<em><b>CHAIR RAIL</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #CHAIR_RAIL_VALUE
	 * @generated
	 * @ordered
	 */
	CHAIR_RAIL(1, "CHAIR_RAIL", "chair-rail"),

	/**
	 * The '<em><b>CROWN</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #CROWN_VALUE
	 * @generated
	 * @ordered
	 */
	CROWN(2, "CROWN", "crown"),

	/**
	 * The '<em><b>CASING</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #CASING_VALUE
	 * @generated
	 * @ordered
	 */
	CASING(3, "CASING", "casing"),

	/**
	 * The '<em><b>PICTURE RAIL</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #PICTURE_RAIL_VALUE
	 * @generated
	 * @ordered
	 */
	PICTURE_RAIL(4, "PICTURE_RAIL", "picture-rail"),

	/**
	 * The '<em><b>HANDRAIL</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #HANDRAIL_VALUE
	 * @generated
	 * @ordered
	 */
	HANDRAIL(5, "HANDRAIL", "handrail");

	/**
	 * The '<em><b>BASE</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #BASE
	 * @model literal="base"
	 * @generated
	 * @ordered
	 */
	public static final int BASE_VALUE = 0;

	/**
	 * The '<em><b>CHAIR RAIL</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #CHAIR_RAIL
	 * @model literal="chair-rail"
	 * @generated
	 * @ordered
	 */
	public static final int CHAIR_RAIL_VALUE = 1;

	/**
	 * The '<em><b>CROWN</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #CROWN
	 * @model literal="crown"
	 * @generated
	 * @ordered
	 */
	public static final int CROWN_VALUE = 2;

	/**
	 * The '<em><b>CASING</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #CASING
	 * @model literal="casing"
	 * @generated
	 * @ordered
	 */
	public static final int CASING_VALUE = 3;

	/**
	 * The '<em><b>PICTURE RAIL</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #PICTURE_RAIL
	 * @model literal="picture-rail"
	 * @generated
	 * @ordered
	 */
	public static final int PICTURE_RAIL_VALUE = 4;

	/**
	 * The '<em><b>HANDRAIL</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #HANDRAIL
	 * @model literal="handrail"
	 * @generated
	 * @ordered
	 */
	public static final int HANDRAIL_VALUE = 5;

	/**
	 * An array of all the '<em><b>Trim Type</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final TrimType[] VALUES_ARRAY =
		new TrimType[] {
			BASE,
			CHAIR_RAIL,
			CROWN,
			CASING,
			PICTURE_RAIL,
			HANDRAIL,
		};

	/**
	 * A public read-only list of all the '<em><b>Trim Type</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<TrimType> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Trim Type</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static TrimType get(String literal) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			TrimType result = VALUES_ARRAY[i];
			if (result.toString().equals(literal)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Trim Type</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static TrimType getByName(String name) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			TrimType result = VALUES_ARRAY[i];
			if (result.getName().equals(name)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Trim Type</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static TrimType get(int value) {
		switch (value) {
			case BASE_VALUE: return BASE;
			case CHAIR_RAIL_VALUE: return CHAIR_RAIL;
			case CROWN_VALUE: return CROWN;
			case CASING_VALUE: return CASING;
			case PICTURE_RAIL_VALUE: return PICTURE_RAIL;
			case HANDRAIL_VALUE: return HANDRAIL;
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
	private TrimType(int value, String name, String literal) {
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
	
} //TrimType
