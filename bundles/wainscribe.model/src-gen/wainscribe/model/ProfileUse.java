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
 * A representation of the literals of the enumeration '<em><b>Profile Use</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * <!-- begin-model-doc -->
 * Where a moulding is used.
 * <!-- end-model-doc -->
 * @see wainscribe.model.WainscribePackage#getProfileUse()
 * @model
 * @generated
 */
public enum ProfileUse implements Enumerator {
	/**
	 * The '<em><b>FRAME</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #FRAME_VALUE
	 * @generated
	 * @ordered
	 */
	FRAME(0, "FRAME", "frame"),

	/**
	 * The '<em><b>RAIL</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #RAIL_VALUE
	 * @generated
	 * @ordered
	 */
	RAIL(1, "RAIL", "rail"),

	/**
	 * The '<em><b>BASE</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #BASE_VALUE
	 * @generated
	 * @ordered
	 */
	BASE(2, "BASE", "base"),

	/**
	 * The '<em><b>CROWN</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #CROWN_VALUE
	 * @generated
	 * @ordered
	 */
	CROWN(3, "CROWN", "crown"),

	/**
	 * The '<em><b>CASING</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #CASING_VALUE
	 * @generated
	 * @ordered
	 */
	CASING(4, "CASING", "casing"),

	/**
	 * The '<em><b>BATTEN</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #BATTEN_VALUE
	 * @generated
	 * @ordered
	 */
	BATTEN(5, "BATTEN", "batten"),

	/**
	 * The '<em><b>CAP</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * On the top edge of boarding or of a rail.
	 * <!-- end-model-doc -->
	 * @see #CAP_VALUE
	 * @generated
	 * @ordered
	 */
	CAP(6, "CAP", "cap"),

	/**
	 * The '<em><b>SHELF EDGE</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Before the front edge of a shelf.
	 * <!-- end-model-doc -->
	 * @see #SHELF_EDGE_VALUE
	 * @generated
	 * @ordered
	 */
	SHELF_EDGE(7, "SHELF_EDGE", "shelf-edge");

	/**
	 * The '<em><b>FRAME</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #FRAME
	 * @model literal="frame"
	 * @generated
	 * @ordered
	 */
	public static final int FRAME_VALUE = 0;

	/**
	 * The '<em><b>RAIL</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #RAIL
	 * @model literal="rail"
	 * @generated
	 * @ordered
	 */
	public static final int RAIL_VALUE = 1;

	/**
	 * The '<em><b>BASE</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #BASE
	 * @model literal="base"
	 * @generated
	 * @ordered
	 */
	public static final int BASE_VALUE = 2;

	/**
	 * The '<em><b>CROWN</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #CROWN
	 * @model literal="crown"
	 * @generated
	 * @ordered
	 */
	public static final int CROWN_VALUE = 3;

	/**
	 * The '<em><b>CASING</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #CASING
	 * @model literal="casing"
	 * @generated
	 * @ordered
	 */
	public static final int CASING_VALUE = 4;

	/**
	 * The '<em><b>BATTEN</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #BATTEN
	 * @model literal="batten"
	 * @generated
	 * @ordered
	 */
	public static final int BATTEN_VALUE = 5;

	/**
	 * The '<em><b>CAP</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * On the top edge of boarding or of a rail.
	 * <!-- end-model-doc -->
	 * @see #CAP
	 * @model literal="cap"
	 * @generated
	 * @ordered
	 */
	public static final int CAP_VALUE = 6;

	/**
	 * The '<em><b>SHELF EDGE</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Before the front edge of a shelf.
	 * <!-- end-model-doc -->
	 * @see #SHELF_EDGE
	 * @model literal="shelf-edge"
	 * @generated
	 * @ordered
	 */
	public static final int SHELF_EDGE_VALUE = 7;

	/**
	 * An array of all the '<em><b>Profile Use</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final ProfileUse[] VALUES_ARRAY =
		new ProfileUse[] {
			FRAME,
			RAIL,
			BASE,
			CROWN,
			CASING,
			BATTEN,
			CAP,
			SHELF_EDGE,
		};

	/**
	 * A public read-only list of all the '<em><b>Profile Use</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<ProfileUse> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Profile Use</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static ProfileUse get(String literal) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			ProfileUse result = VALUES_ARRAY[i];
			if (result.toString().equals(literal)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Profile Use</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static ProfileUse getByName(String name) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			ProfileUse result = VALUES_ARRAY[i];
			if (result.getName().equals(name)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Profile Use</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static ProfileUse get(int value) {
		switch (value) {
			case FRAME_VALUE: return FRAME;
			case RAIL_VALUE: return RAIL;
			case BASE_VALUE: return BASE;
			case CROWN_VALUE: return CROWN;
			case CASING_VALUE: return CASING;
			case BATTEN_VALUE: return BATTEN;
			case CAP_VALUE: return CAP;
			case SHELF_EDGE_VALUE: return SHELF_EDGE;
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
	private ProfileUse(int value, String name, String literal) {
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
	
} //ProfileUse
