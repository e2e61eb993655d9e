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
 * A representation of the literals of the enumeration '<em><b>Surface</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * <!-- begin-model-doc -->
 * A kind of surface that takes a finish.
 * <!-- end-model-doc -->
 * @see wainscribe.model.WainscribePackage#getSurface()
 * @model
 * @generated
 */
public enum Surface implements Enumerator {
	/**
	 * The '<em><b>WALLS</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #WALLS_VALUE
	 * @generated
	 * @ordered
	 */
	WALLS(0, "WALLS", "walls"),

	/**
	 * The '<em><b>TRIM</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #TRIM_VALUE
	 * @generated
	 * @ordered
	 */
	TRIM(1, "TRIM", "trim"),

	/**
	 * The '<em><b>CEILING</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #CEILING_VALUE
	 * @generated
	 * @ordered
	 */
	CEILING(2, "CEILING", "ceiling"),

	/**
	 * The '<em><b>FLOOR</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #FLOOR_VALUE
	 * @generated
	 * @ordered
	 */
	FLOOR(3, "FLOOR", "floor"),

	/**
	 * The '<em><b>LOWER</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The wall below the rail.
	 * <!-- end-model-doc -->
	 * @see #LOWER_VALUE
	 * @generated
	 * @ordered
	 */
	LOWER(4, "LOWER", "lower"),

	/**
	 * The '<em><b>UPPER</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The wall above the rail.
	 * <!-- end-model-doc -->
	 * @see #UPPER_VALUE
	 * @generated
	 * @ordered
	 */
	UPPER(5, "UPPER", "upper");

	/**
	 * The '<em><b>WALLS</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #WALLS
	 * @model literal="walls"
	 * @generated
	 * @ordered
	 */
	public static final int WALLS_VALUE = 0;

	/**
	 * The '<em><b>TRIM</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #TRIM
	 * @model literal="trim"
	 * @generated
	 * @ordered
	 */
	public static final int TRIM_VALUE = 1;

	/**
	 * The '<em><b>CEILING</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #CEILING
	 * @model literal="ceiling"
	 * @generated
	 * @ordered
	 */
	public static final int CEILING_VALUE = 2;

	/**
	 * The '<em><b>FLOOR</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #FLOOR
	 * @model literal="floor"
	 * @generated
	 * @ordered
	 */
	public static final int FLOOR_VALUE = 3;

	/**
	 * The '<em><b>LOWER</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The wall below the rail.
	 * <!-- end-model-doc -->
	 * @see #LOWER
	 * @model literal="lower"
	 * @generated
	 * @ordered
	 */
	public static final int LOWER_VALUE = 4;

	/**
	 * The '<em><b>UPPER</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The wall above the rail.
	 * <!-- end-model-doc -->
	 * @see #UPPER
	 * @model literal="upper"
	 * @generated
	 * @ordered
	 */
	public static final int UPPER_VALUE = 5;

	/**
	 * An array of all the '<em><b>Surface</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final Surface[] VALUES_ARRAY =
		new Surface[] {
			WALLS,
			TRIM,
			CEILING,
			FLOOR,
			LOWER,
			UPPER,
		};

	/**
	 * A public read-only list of all the '<em><b>Surface</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<Surface> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Surface</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static Surface get(String literal) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			Surface result = VALUES_ARRAY[i];
			if (result.toString().equals(literal)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Surface</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static Surface getByName(String name) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			Surface result = VALUES_ARRAY[i];
			if (result.getName().equals(name)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Surface</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static Surface get(int value) {
		switch (value) {
			case WALLS_VALUE: return WALLS;
			case TRIM_VALUE: return TRIM;
			case CEILING_VALUE: return CEILING;
			case FLOOR_VALUE: return FLOOR;
			case LOWER_VALUE: return LOWER;
			case UPPER_VALUE: return UPPER;
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
	private Surface(int value, String name, String literal) {
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
	
} //Surface
