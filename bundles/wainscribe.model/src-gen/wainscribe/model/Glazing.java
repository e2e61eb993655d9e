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
 * A representation of the literals of the enumeration '<em><b>Glazing</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * <!-- begin-model-doc -->
 * Kind of glass.
 * <!-- end-model-doc -->
 * @see wainscribe.model.WainscribePackage#getGlazing()
 * @model
 * @generated
 */
public enum Glazing implements Enumerator {
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
	 * The '<em><b>ANNEALED</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #ANNEALED_VALUE
	 * @generated
	 * @ordered
	 */
	ANNEALED(1, "ANNEALED", "annealed"),

	/**
	 * The '<em><b>TEMPERED</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #TEMPERED_VALUE
	 * @generated
	 * @ordered
	 */
	TEMPERED(2, "TEMPERED", "tempered"),

	/**
	 * The '<em><b>TOUGHENED</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #TOUGHENED_VALUE
	 * @generated
	 * @ordered
	 */
	TOUGHENED(3, "TOUGHENED", "toughened"),

	/**
	 * The '<em><b>LAMINATED</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #LAMINATED_VALUE
	 * @generated
	 * @ordered
	 */
	LAMINATED(4, "LAMINATED", "laminated");

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
	 * The '<em><b>ANNEALED</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #ANNEALED
	 * @model literal="annealed"
	 * @generated
	 * @ordered
	 */
	public static final int ANNEALED_VALUE = 1;

	/**
	 * The '<em><b>TEMPERED</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #TEMPERED
	 * @model literal="tempered"
	 * @generated
	 * @ordered
	 */
	public static final int TEMPERED_VALUE = 2;

	/**
	 * The '<em><b>TOUGHENED</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #TOUGHENED
	 * @model literal="toughened"
	 * @generated
	 * @ordered
	 */
	public static final int TOUGHENED_VALUE = 3;

	/**
	 * The '<em><b>LAMINATED</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #LAMINATED
	 * @model literal="laminated"
	 * @generated
	 * @ordered
	 */
	public static final int LAMINATED_VALUE = 4;

	/**
	 * An array of all the '<em><b>Glazing</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final Glazing[] VALUES_ARRAY =
		new Glazing[] {
			UNRECORDED,
			ANNEALED,
			TEMPERED,
			TOUGHENED,
			LAMINATED,
		};

	/**
	 * A public read-only list of all the '<em><b>Glazing</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<Glazing> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Glazing</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static Glazing get(String literal) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			Glazing result = VALUES_ARRAY[i];
			if (result.toString().equals(literal)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Glazing</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static Glazing getByName(String name) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			Glazing result = VALUES_ARRAY[i];
			if (result.getName().equals(name)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Glazing</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static Glazing get(int value) {
		switch (value) {
			case UNRECORDED_VALUE: return UNRECORDED;
			case ANNEALED_VALUE: return ANNEALED;
			case TEMPERED_VALUE: return TEMPERED;
			case TOUGHENED_VALUE: return TOUGHENED;
			case LAMINATED_VALUE: return LAMINATED;
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
	private Glazing(int value, String name, String literal) {
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
	
} //Glazing
