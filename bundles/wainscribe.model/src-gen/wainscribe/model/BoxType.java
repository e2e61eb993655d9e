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
 * A representation of the literals of the enumeration '<em><b>Box Type</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * <!-- begin-model-doc -->
 * What an electrical box serves.
 * <!-- end-model-doc -->
 * @see wainscribe.model.WainscribePackage#getBoxType()
 * @model
 * @generated
 */
public enum BoxType implements Enumerator {
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
	 * The '<em><b>RECEPTACLE</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #RECEPTACLE_VALUE
	 * @generated
	 * @ordered
	 */
	RECEPTACLE(1, "RECEPTACLE", "receptacle"),

	/**
	 * The '<em><b>SWITCH</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #SWITCH_VALUE
	 * @generated
	 * @ordered
	 */
	SWITCH(2, "SWITCH", "switch"),

	/**
	 * The '<em><b>DATA</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #DATA_VALUE
	 * @generated
	 * @ordered
	 */
	DATA(3, "DATA", "data"),

	/**
	 * The '<em><b>PANEL</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #PANEL_VALUE
	 * @generated
	 * @ordered
	 */
	PANEL(4, "PANEL", "panel"),

	/**
	 * The '<em><b>JUNCTION</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #JUNCTION_VALUE
	 * @generated
	 * @ordered
	 */
	JUNCTION(5, "JUNCTION", "junction");

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
	 * The '<em><b>RECEPTACLE</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #RECEPTACLE
	 * @model literal="receptacle"
	 * @generated
	 * @ordered
	 */
	public static final int RECEPTACLE_VALUE = 1;

	/**
	 * The '<em><b>SWITCH</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #SWITCH
	 * @model literal="switch"
	 * @generated
	 * @ordered
	 */
	public static final int SWITCH_VALUE = 2;

	/**
	 * The '<em><b>DATA</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #DATA
	 * @model literal="data"
	 * @generated
	 * @ordered
	 */
	public static final int DATA_VALUE = 3;

	/**
	 * The '<em><b>PANEL</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #PANEL
	 * @model literal="panel"
	 * @generated
	 * @ordered
	 */
	public static final int PANEL_VALUE = 4;

	/**
	 * The '<em><b>JUNCTION</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #JUNCTION
	 * @model literal="junction"
	 * @generated
	 * @ordered
	 */
	public static final int JUNCTION_VALUE = 5;

	/**
	 * An array of all the '<em><b>Box Type</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final BoxType[] VALUES_ARRAY =
		new BoxType[] {
			UNRECORDED,
			RECEPTACLE,
			SWITCH,
			DATA,
			PANEL,
			JUNCTION,
		};

	/**
	 * A public read-only list of all the '<em><b>Box Type</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<BoxType> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Box Type</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static BoxType get(String literal) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			BoxType result = VALUES_ARRAY[i];
			if (result.toString().equals(literal)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Box Type</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static BoxType getByName(String name) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			BoxType result = VALUES_ARRAY[i];
			if (result.getName().equals(name)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Box Type</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static BoxType get(int value) {
		switch (value) {
			case UNRECORDED_VALUE: return UNRECORDED;
			case RECEPTACLE_VALUE: return RECEPTACLE;
			case SWITCH_VALUE: return SWITCH;
			case DATA_VALUE: return DATA;
			case PANEL_VALUE: return PANEL;
			case JUNCTION_VALUE: return JUNCTION;
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
	private BoxType(int value, String name, String literal) {
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
	
} //BoxType
