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
 * A representation of the literals of the enumeration '<em><b>Casing Joint</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * <!-- begin-model-doc -->
 * How base that is thicker than a casing meets it.
 * <!-- end-model-doc -->
 * @see wainscribe.model.WainscribePackage#getCasingJoint()
 * @model
 * @generated
 */
public enum CasingJoint implements Enumerator {
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
	 * The '<em><b>RETURN</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A mitred return takes it back to the wall.
	 * <!-- end-model-doc -->
	 * @see #RETURN_VALUE
	 * @generated
	 * @ordered
	 */
	RETURN(1, "RETURN", "return"),

	/**
	 * The '<em><b>PLINTH</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * It stops at a plinth block under the casing.
	 * <!-- end-model-doc -->
	 * @see #PLINTH_VALUE
	 * @generated
	 * @ordered
	 */
	PLINTH(2, "PLINTH", "plinth");

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
	 * The '<em><b>RETURN</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A mitred return takes it back to the wall.
	 * <!-- end-model-doc -->
	 * @see #RETURN
	 * @model literal="return"
	 * @generated
	 * @ordered
	 */
	public static final int RETURN_VALUE = 1;

	/**
	 * The '<em><b>PLINTH</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * It stops at a plinth block under the casing.
	 * <!-- end-model-doc -->
	 * @see #PLINTH
	 * @model literal="plinth"
	 * @generated
	 * @ordered
	 */
	public static final int PLINTH_VALUE = 2;

	/**
	 * An array of all the '<em><b>Casing Joint</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final CasingJoint[] VALUES_ARRAY =
		new CasingJoint[] {
			UNRECORDED,
			RETURN,
			PLINTH,
		};

	/**
	 * A public read-only list of all the '<em><b>Casing Joint</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<CasingJoint> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Casing Joint</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static CasingJoint get(String literal) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			CasingJoint result = VALUES_ARRAY[i];
			if (result.toString().equals(literal)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Casing Joint</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static CasingJoint getByName(String name) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			CasingJoint result = VALUES_ARRAY[i];
			if (result.getName().equals(name)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Casing Joint</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static CasingJoint get(int value) {
		switch (value) {
			case UNRECORDED_VALUE: return UNRECORDED;
			case RETURN_VALUE: return RETURN;
			case PLINTH_VALUE: return PLINTH;
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
	private CasingJoint(int value, String name, String literal) {
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
	
} //CasingJoint
