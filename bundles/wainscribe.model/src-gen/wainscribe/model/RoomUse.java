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
 * A representation of the literals of the enumeration '<em><b>Room Use</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * <!-- begin-model-doc -->
 * What a room is used for.
 * <!-- end-model-doc -->
 * @see wainscribe.model.WainscribePackage#getRoomUse()
 * @model
 * @generated
 */
public enum RoomUse implements Enumerator {
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
	 * The '<em><b>POWDER ROOM</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #POWDER_ROOM_VALUE
	 * @generated
	 * @ordered
	 */
	POWDER_ROOM(1, "POWDER_ROOM", "powder-room"),

	/**
	 * The '<em><b>BATH WITH SHOWER</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #BATH_WITH_SHOWER_VALUE
	 * @generated
	 * @ordered
	 */
	BATH_WITH_SHOWER(2, "BATH_WITH_SHOWER", "bath-with-shower"),

	/**
	 * The '<em><b>BATH WITH TUB</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #BATH_WITH_TUB_VALUE
	 * @generated
	 * @ordered
	 */
	BATH_WITH_TUB(3, "BATH_WITH_TUB", "bath-with-tub"),

	/**
	 * The '<em><b>KITCHEN</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #KITCHEN_VALUE
	 * @generated
	 * @ordered
	 */
	KITCHEN(4, "KITCHEN", "kitchen"),

	/**
	 * The '<em><b>BEDROOM</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #BEDROOM_VALUE
	 * @generated
	 * @ordered
	 */
	BEDROOM(5, "BEDROOM", "bedroom"),

	/**
	 * The '<em><b>LIVING</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #LIVING_VALUE
	 * @generated
	 * @ordered
	 */
	LIVING(6, "LIVING", "living"),

	/**
	 * The '<em><b>DINING</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #DINING_VALUE
	 * @generated
	 * @ordered
	 */
	DINING(7, "DINING", "dining"),

	/**
	 * The '<em><b>HALL</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #HALL_VALUE
	 * @generated
	 * @ordered
	 */
	HALL(8, "HALL", "hall"),

	/**
	 * The '<em><b>STAIR</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #STAIR_VALUE
	 * @generated
	 * @ordered
	 */
	STAIR(9, "STAIR", "stair"),

	/**
	 * The '<em><b>LAUNDRY</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #LAUNDRY_VALUE
	 * @generated
	 * @ordered
	 */
	LAUNDRY(10, "LAUNDRY", "laundry"),

	/**
	 * The '<em><b>UTILITY</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #UTILITY_VALUE
	 * @generated
	 * @ordered
	 */
	UTILITY(11, "UTILITY", "utility");

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
	 * The '<em><b>POWDER ROOM</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #POWDER_ROOM
	 * @model literal="powder-room"
	 * @generated
	 * @ordered
	 */
	public static final int POWDER_ROOM_VALUE = 1;

	/**
	 * The '<em><b>BATH WITH SHOWER</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #BATH_WITH_SHOWER
	 * @model literal="bath-with-shower"
	 * @generated
	 * @ordered
	 */
	public static final int BATH_WITH_SHOWER_VALUE = 2;

	/**
	 * The '<em><b>BATH WITH TUB</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #BATH_WITH_TUB
	 * @model literal="bath-with-tub"
	 * @generated
	 * @ordered
	 */
	public static final int BATH_WITH_TUB_VALUE = 3;

	/**
	 * The '<em><b>KITCHEN</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #KITCHEN
	 * @model literal="kitchen"
	 * @generated
	 * @ordered
	 */
	public static final int KITCHEN_VALUE = 4;

	/**
	 * The '<em><b>BEDROOM</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #BEDROOM
	 * @model literal="bedroom"
	 * @generated
	 * @ordered
	 */
	public static final int BEDROOM_VALUE = 5;

	/**
	 * The '<em><b>LIVING</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #LIVING
	 * @model literal="living"
	 * @generated
	 * @ordered
	 */
	public static final int LIVING_VALUE = 6;

	/**
	 * The '<em><b>DINING</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #DINING
	 * @model literal="dining"
	 * @generated
	 * @ordered
	 */
	public static final int DINING_VALUE = 7;

	/**
	 * The '<em><b>HALL</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #HALL
	 * @model literal="hall"
	 * @generated
	 * @ordered
	 */
	public static final int HALL_VALUE = 8;

	/**
	 * The '<em><b>STAIR</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #STAIR
	 * @model literal="stair"
	 * @generated
	 * @ordered
	 */
	public static final int STAIR_VALUE = 9;

	/**
	 * The '<em><b>LAUNDRY</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #LAUNDRY
	 * @model literal="laundry"
	 * @generated
	 * @ordered
	 */
	public static final int LAUNDRY_VALUE = 10;

	/**
	 * The '<em><b>UTILITY</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #UTILITY
	 * @model literal="utility"
	 * @generated
	 * @ordered
	 */
	public static final int UTILITY_VALUE = 11;

	/**
	 * An array of all the '<em><b>Room Use</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final RoomUse[] VALUES_ARRAY =
		new RoomUse[] {
			UNRECORDED,
			POWDER_ROOM,
			BATH_WITH_SHOWER,
			BATH_WITH_TUB,
			KITCHEN,
			BEDROOM,
			LIVING,
			DINING,
			HALL,
			STAIR,
			LAUNDRY,
			UTILITY,
		};

	/**
	 * A public read-only list of all the '<em><b>Room Use</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<RoomUse> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Room Use</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static RoomUse get(String literal) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			RoomUse result = VALUES_ARRAY[i];
			if (result.toString().equals(literal)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Room Use</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static RoomUse getByName(String name) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			RoomUse result = VALUES_ARRAY[i];
			if (result.getName().equals(name)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Room Use</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static RoomUse get(int value) {
		switch (value) {
			case UNRECORDED_VALUE: return UNRECORDED;
			case POWDER_ROOM_VALUE: return POWDER_ROOM;
			case BATH_WITH_SHOWER_VALUE: return BATH_WITH_SHOWER;
			case BATH_WITH_TUB_VALUE: return BATH_WITH_TUB;
			case KITCHEN_VALUE: return KITCHEN;
			case BEDROOM_VALUE: return BEDROOM;
			case LIVING_VALUE: return LIVING;
			case DINING_VALUE: return DINING;
			case HALL_VALUE: return HALL;
			case STAIR_VALUE: return STAIR;
			case LAUNDRY_VALUE: return LAUNDRY;
			case UTILITY_VALUE: return UTILITY;
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
	private RoomUse(int value, String name, String literal) {
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
	
} //RoomUse
