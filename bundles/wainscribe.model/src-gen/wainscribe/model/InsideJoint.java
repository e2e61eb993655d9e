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
 * A representation of the literals of the enumeration '<em><b>Inside Joint</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * <!-- begin-model-doc -->
 * How two new runs meet in an inside corner.
 * <!-- end-model-doc -->
 * @see wainscribe.model.WainscribePackage#getInsideJoint()
 * @model
 * @generated
 */
public enum InsideJoint implements Enumerator {
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
	 * The '<em><b>COPE</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * One runs through, the other is coped over its face.
	 * <!-- end-model-doc -->
	 * @see #COPE_VALUE
	 * @generated
	 * @ordered
	 */
	COPE(1, "COPE", "cope"),

	/**
	 * The '<em><b>MITRE</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Both are mitred at half the corner.
	 * <!-- end-model-doc -->
	 * @see #MITRE_VALUE
	 * @generated
	 * @ordered
	 */
	MITRE(2, "MITRE", "mitre"),

	/**
	 * The '<em><b>BLOCK</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Base and crown stop square at a corner block; a rail is coped.
	 * <!-- end-model-doc -->
	 * @see #BLOCK_VALUE
	 * @generated
	 * @ordered
	 */
	BLOCK(3, "BLOCK", "block");

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
	 * The '<em><b>COPE</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * One runs through, the other is coped over its face.
	 * <!-- end-model-doc -->
	 * @see #COPE
	 * @model literal="cope"
	 * @generated
	 * @ordered
	 */
	public static final int COPE_VALUE = 1;

	/**
	 * The '<em><b>MITRE</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Both are mitred at half the corner.
	 * <!-- end-model-doc -->
	 * @see #MITRE
	 * @model literal="mitre"
	 * @generated
	 * @ordered
	 */
	public static final int MITRE_VALUE = 2;

	/**
	 * The '<em><b>BLOCK</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Base and crown stop square at a corner block; a rail is coped.
	 * <!-- end-model-doc -->
	 * @see #BLOCK
	 * @model literal="block"
	 * @generated
	 * @ordered
	 */
	public static final int BLOCK_VALUE = 3;

	/**
	 * An array of all the '<em><b>Inside Joint</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final InsideJoint[] VALUES_ARRAY =
		new InsideJoint[] {
			UNRECORDED,
			COPE,
			MITRE,
			BLOCK,
		};

	/**
	 * A public read-only list of all the '<em><b>Inside Joint</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<InsideJoint> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Inside Joint</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static InsideJoint get(String literal) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			InsideJoint result = VALUES_ARRAY[i];
			if (result.toString().equals(literal)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Inside Joint</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static InsideJoint getByName(String name) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			InsideJoint result = VALUES_ARRAY[i];
			if (result.getName().equals(name)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Inside Joint</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static InsideJoint get(int value) {
		switch (value) {
			case UNRECORDED_VALUE: return UNRECORDED;
			case COPE_VALUE: return COPE;
			case MITRE_VALUE: return MITRE;
			case BLOCK_VALUE: return BLOCK;
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
	private InsideJoint(int value, String name, String literal) {
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
	
} //InsideJoint
