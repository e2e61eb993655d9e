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
 * A representation of the literals of the enumeration '<em><b>Saw Scale</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * <!-- begin-model-doc -->
 * The steps of the scale that a saw is set by.
 * <!-- end-model-doc -->
 * @see wainscribe.model.WainscribePackage#getSawScale()
 * @model
 * @generated
 */
public enum SawScale implements Enumerator {
	/**
	 * The '<em><b>UNRECORDED</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Not decided.
	 * <!-- end-model-doc -->
	 * @see #UNRECORDED_VALUE
	 * @generated
	 * @ordered
	 */
	UNRECORDED(0, "UNRECORDED", "unrecorded"),

	/**
	 * The '<em><b>HALF</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Half degrees.
	 * <!-- end-model-doc -->
	 * @see #HALF_VALUE
	 * @generated
	 * @ordered
	 */
	HALF(1, "HALF", "0.5"),

	/**
	 * The '<em><b>TENTH</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Tenths of a degree.
	 * <!-- end-model-doc -->
	 * @see #TENTH_VALUE
	 * @generated
	 * @ordered
	 */
	TENTH(2, "TENTH", "0.1");

	/**
	 * The '<em><b>UNRECORDED</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Not decided.
	 * <!-- end-model-doc -->
	 * @see #UNRECORDED
	 * @model literal="unrecorded"
	 * @generated
	 * @ordered
	 */
	public static final int UNRECORDED_VALUE = 0;

	/**
	 * The '<em><b>HALF</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Half degrees.
	 * <!-- end-model-doc -->
	 * @see #HALF
	 * @model literal="0.5"
	 * @generated
	 * @ordered
	 */
	public static final int HALF_VALUE = 1;

	/**
	 * The '<em><b>TENTH</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Tenths of a degree.
	 * <!-- end-model-doc -->
	 * @see #TENTH
	 * @model literal="0.1"
	 * @generated
	 * @ordered
	 */
	public static final int TENTH_VALUE = 2;

	/**
	 * An array of all the '<em><b>Saw Scale</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final SawScale[] VALUES_ARRAY =
		new SawScale[] {
			UNRECORDED,
			HALF,
			TENTH,
		};

	/**
	 * A public read-only list of all the '<em><b>Saw Scale</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<SawScale> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Saw Scale</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static SawScale get(String literal) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			SawScale result = VALUES_ARRAY[i];
			if (result.toString().equals(literal)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Saw Scale</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static SawScale getByName(String name) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			SawScale result = VALUES_ARRAY[i];
			if (result.getName().equals(name)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Saw Scale</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static SawScale get(int value) {
		switch (value) {
			case UNRECORDED_VALUE: return UNRECORDED;
			case HALF_VALUE: return HALF;
			case TENTH_VALUE: return TENTH;
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
	private SawScale(int value, String name, String literal) {
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
	
} //SawScale
