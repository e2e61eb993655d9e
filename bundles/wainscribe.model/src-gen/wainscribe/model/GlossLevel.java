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
 * A representation of the literals of the enumeration '<em><b>Gloss Level</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * <!-- begin-model-doc -->
 * Gloss level by measured limits (Master Painters Institute gloss and sheen standard).
 * <!-- end-model-doc -->
 * @see wainscribe.model.WainscribePackage#getGlossLevel()
 * @model
 * @generated
 */
public enum GlossLevel implements Enumerator {
	/**
	 * The '<em><b>UNRECORDED</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Not recorded on the survey.
	 * <!-- end-model-doc -->
	 * @see #UNRECORDED_VALUE
	 * @generated
	 * @ordered
	 */
	UNRECORDED(0, "UNRECORDED", "unrecorded"),

	/**
	 * The '<em><b>G1</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #G1_VALUE
	 * @generated
	 * @ordered
	 */
	G1(1, "G1", "G1"),

	/**
	 * The '<em><b>G2</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #G2_VALUE
	 * @generated
	 * @ordered
	 */
	G2(2, "G2", "G2"),

	/**
	 * The '<em><b>G3</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #G3_VALUE
	 * @generated
	 * @ordered
	 */
	G3(3, "G3", "G3"),

	/**
	 * The '<em><b>G4</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #G4_VALUE
	 * @generated
	 * @ordered
	 */
	G4(4, "G4", "G4"),

	/**
	 * The '<em><b>G5</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #G5_VALUE
	 * @generated
	 * @ordered
	 */
	G5(5, "G5", "G5"),

	/**
	 * The '<em><b>G6</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #G6_VALUE
	 * @generated
	 * @ordered
	 */
	G6(6, "G6", "G6"),

	/**
	 * The '<em><b>G7</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #G7_VALUE
	 * @generated
	 * @ordered
	 */
	G7(7, "G7", "G7");

	/**
	 * The '<em><b>UNRECORDED</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Not recorded on the survey.
	 * <!-- end-model-doc -->
	 * @see #UNRECORDED
	 * @model literal="unrecorded"
	 * @generated
	 * @ordered
	 */
	public static final int UNRECORDED_VALUE = 0;

	/**
	 * The '<em><b>G1</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #G1
	 * @model
	 * @generated
	 * @ordered
	 */
	public static final int G1_VALUE = 1;

	/**
	 * The '<em><b>G2</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #G2
	 * @model
	 * @generated
	 * @ordered
	 */
	public static final int G2_VALUE = 2;

	/**
	 * The '<em><b>G3</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #G3
	 * @model
	 * @generated
	 * @ordered
	 */
	public static final int G3_VALUE = 3;

	/**
	 * The '<em><b>G4</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #G4
	 * @model
	 * @generated
	 * @ordered
	 */
	public static final int G4_VALUE = 4;

	/**
	 * The '<em><b>G5</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #G5
	 * @model
	 * @generated
	 * @ordered
	 */
	public static final int G5_VALUE = 5;

	/**
	 * The '<em><b>G6</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #G6
	 * @model
	 * @generated
	 * @ordered
	 */
	public static final int G6_VALUE = 6;

	/**
	 * The '<em><b>G7</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #G7
	 * @model
	 * @generated
	 * @ordered
	 */
	public static final int G7_VALUE = 7;

	/**
	 * An array of all the '<em><b>Gloss Level</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final GlossLevel[] VALUES_ARRAY =
		new GlossLevel[] {
			UNRECORDED,
			G1,
			G2,
			G3,
			G4,
			G5,
			G6,
			G7,
		};

	/**
	 * A public read-only list of all the '<em><b>Gloss Level</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<GlossLevel> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Gloss Level</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static GlossLevel get(String literal) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			GlossLevel result = VALUES_ARRAY[i];
			if (result.toString().equals(literal)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Gloss Level</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static GlossLevel getByName(String name) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			GlossLevel result = VALUES_ARRAY[i];
			if (result.getName().equals(name)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Gloss Level</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static GlossLevel get(int value) {
		switch (value) {
			case UNRECORDED_VALUE: return UNRECORDED;
			case G1_VALUE: return G1;
			case G2_VALUE: return G2;
			case G3_VALUE: return G3;
			case G4_VALUE: return G4;
			case G5_VALUE: return G5;
			case G6_VALUE: return G6;
			case G7_VALUE: return G7;
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
	private GlossLevel(int value, String name, String literal) {
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
	
} //GlossLevel
