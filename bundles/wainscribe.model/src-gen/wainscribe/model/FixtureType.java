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
 * A representation of the literals of the enumeration '<em><b>Fixture Type</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * <!-- begin-model-doc -->
 * What a fixture is.
 * <!-- end-model-doc -->
 * @see wainscribe.model.WainscribePackage#getFixtureType()
 * @model
 * @generated
 */
public enum FixtureType implements Enumerator {
	/**
	 * The '<em><b>TOILET</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #TOILET_VALUE
	 * @generated
	 * @ordered
	 */
	TOILET(0, "TOILET", "toilet"),

	/**
	 * The '<em><b>BIDET</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #BIDET_VALUE
	 * @generated
	 * @ordered
	 */
	BIDET(1, "BIDET", "bidet"),

	/**
	 * The '<em><b>VANITY</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #VANITY_VALUE
	 * @generated
	 * @ordered
	 */
	VANITY(2, "VANITY", "vanity"),

	/**
	 * The '<em><b>BASIN</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #BASIN_VALUE
	 * @generated
	 * @ordered
	 */
	BASIN(3, "BASIN", "basin"),

	/**
	 * The '<em><b>SINK</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #SINK_VALUE
	 * @generated
	 * @ordered
	 */
	SINK(4, "SINK", "sink"),

	/**
	 * The '<em><b>TUB</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #TUB_VALUE
	 * @generated
	 * @ordered
	 */
	TUB(5, "TUB", "tub"),

	/**
	 * The '<em><b>SHOWER</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #SHOWER_VALUE
	 * @generated
	 * @ordered
	 */
	SHOWER(6, "SHOWER", "shower"),

	/**
	 * The '<em><b>TOWEL BAR</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #TOWEL_BAR_VALUE
	 * @generated
	 * @ordered
	 */
	TOWEL_BAR(7, "TOWEL_BAR", "towel-bar"),

	/**
	 * The '<em><b>TOWEL RING</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #TOWEL_RING_VALUE
	 * @generated
	 * @ordered
	 */
	TOWEL_RING(8, "TOWEL_RING", "towel-ring"),

	/**
	 * The '<em><b>ROBE HOOK</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #ROBE_HOOK_VALUE
	 * @generated
	 * @ordered
	 */
	ROBE_HOOK(9, "ROBE_HOOK", "robe-hook"),

	/**
	 * The '<em><b>TP HOLDER</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #TP_HOLDER_VALUE
	 * @generated
	 * @ordered
	 */
	TP_HOLDER(10, "TP_HOLDER", "tp-holder"),

	/**
	 * The '<em><b>GRAB BAR</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #GRAB_BAR_VALUE
	 * @generated
	 * @ordered
	 */
	GRAB_BAR(11, "GRAB_BAR", "grab-bar"),

	/**
	 * The '<em><b>SCONCE</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #SCONCE_VALUE
	 * @generated
	 * @ordered
	 */
	SCONCE(12, "SCONCE", "sconce"),

	/**
	 * The '<em><b>HEATER</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #HEATER_VALUE
	 * @generated
	 * @ordered
	 */
	HEATER(13, "HEATER", "heater"),

	/**
	 * The '<em><b>RADIATOR</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #RADIATOR_VALUE
	 * @generated
	 * @ordered
	 */
	RADIATOR(14, "RADIATOR", "radiator"),

	/**
	 * The '<em><b>REGISTER</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #REGISTER_VALUE
	 * @generated
	 * @ordered
	 */
	REGISTER(15, "REGISTER", "register"),

	/**
	 * The '<em><b>GRILLE</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #GRILLE_VALUE
	 * @generated
	 * @ordered
	 */
	GRILLE(16, "GRILLE", "grille"),

	/**
	 * The '<em><b>MIRROR</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #MIRROR_VALUE
	 * @generated
	 * @ordered
	 */
	MIRROR(17, "MIRROR", "mirror"),

	/**
	 * The '<em><b>CABINET</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #CABINET_VALUE
	 * @generated
	 * @ordered
	 */
	CABINET(18, "CABINET", "cabinet"),

	/**
	 * The '<em><b>SHELF</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #SHELF_VALUE
	 * @generated
	 * @ordered
	 */
	SHELF(19, "SHELF", "shelf"),

	/**
	 * The '<em><b>ART</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #ART_VALUE
	 * @generated
	 * @ordered
	 */
	ART(20, "ART", "art"),

	/**
	 * The '<em><b>RANGE</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #RANGE_VALUE
	 * @generated
	 * @ordered
	 */
	RANGE(21, "RANGE", "range"),

	/**
	 * The '<em><b>COOKTOP</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #COOKTOP_VALUE
	 * @generated
	 * @ordered
	 */
	COOKTOP(22, "COOKTOP", "cooktop"),

	/**
	 * The '<em><b>HOOD</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #HOOD_VALUE
	 * @generated
	 * @ordered
	 */
	HOOD(23, "HOOD", "hood"),

	/**
	 * The '<em><b>APPLIANCE</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #APPLIANCE_VALUE
	 * @generated
	 * @ordered
	 */
	APPLIANCE(24, "APPLIANCE", "appliance"),

	/**
	 * The '<em><b>WASHER</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #WASHER_VALUE
	 * @generated
	 * @ordered
	 */
	WASHER(25, "WASHER", "washer"),

	/**
	 * The '<em><b>FIREPLACE</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #FIREPLACE_VALUE
	 * @generated
	 * @ordered
	 */
	FIREPLACE(26, "FIREPLACE", "fireplace"),

	/**
	 * The '<em><b>THERMOSTAT</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #THERMOSTAT_VALUE
	 * @generated
	 * @ordered
	 */
	THERMOSTAT(27, "THERMOSTAT", "thermostat"),

	/**
	 * The '<em><b>KEYPAD</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #KEYPAD_VALUE
	 * @generated
	 * @ordered
	 */
	KEYPAD(28, "KEYPAD", "keypad"),

	/**
	 * The '<em><b>HANDRAIL</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #HANDRAIL_VALUE
	 * @generated
	 * @ordered
	 */
	HANDRAIL(29, "HANDRAIL", "handrail");

	/**
	 * The '<em><b>TOILET</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #TOILET
	 * @model literal="toilet"
	 * @generated
	 * @ordered
	 */
	public static final int TOILET_VALUE = 0;

	/**
	 * The '<em><b>BIDET</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #BIDET
	 * @model literal="bidet"
	 * @generated
	 * @ordered
	 */
	public static final int BIDET_VALUE = 1;

	/**
	 * The '<em><b>VANITY</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #VANITY
	 * @model literal="vanity"
	 * @generated
	 * @ordered
	 */
	public static final int VANITY_VALUE = 2;

	/**
	 * The '<em><b>BASIN</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #BASIN
	 * @model literal="basin"
	 * @generated
	 * @ordered
	 */
	public static final int BASIN_VALUE = 3;

	/**
	 * The '<em><b>SINK</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #SINK
	 * @model literal="sink"
	 * @generated
	 * @ordered
	 */
	public static final int SINK_VALUE = 4;

	/**
	 * The '<em><b>TUB</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #TUB
	 * @model literal="tub"
	 * @generated
	 * @ordered
	 */
	public static final int TUB_VALUE = 5;

	/**
	 * The '<em><b>SHOWER</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #SHOWER
	 * @model literal="shower"
	 * @generated
	 * @ordered
	 */
	public static final int SHOWER_VALUE = 6;

	/**
	 * The '<em><b>TOWEL BAR</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #TOWEL_BAR
	 * @model literal="towel-bar"
	 * @generated
	 * @ordered
	 */
	public static final int TOWEL_BAR_VALUE = 7;

	/**
	 * The '<em><b>TOWEL RING</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #TOWEL_RING
	 * @model literal="towel-ring"
	 * @generated
	 * @ordered
	 */
	public static final int TOWEL_RING_VALUE = 8;

	/**
	 * The '<em><b>ROBE HOOK</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #ROBE_HOOK
	 * @model literal="robe-hook"
	 * @generated
	 * @ordered
	 */
	public static final int ROBE_HOOK_VALUE = 9;

	/**
	 * The '<em><b>TP HOLDER</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #TP_HOLDER
	 * @model literal="tp-holder"
	 * @generated
	 * @ordered
	 */
	public static final int TP_HOLDER_VALUE = 10;

	/**
	 * The '<em><b>GRAB BAR</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #GRAB_BAR
	 * @model literal="grab-bar"
	 * @generated
	 * @ordered
	 */
	public static final int GRAB_BAR_VALUE = 11;

	/**
	 * The '<em><b>SCONCE</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #SCONCE
	 * @model literal="sconce"
	 * @generated
	 * @ordered
	 */
	public static final int SCONCE_VALUE = 12;

	/**
	 * The '<em><b>HEATER</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #HEATER
	 * @model literal="heater"
	 * @generated
	 * @ordered
	 */
	public static final int HEATER_VALUE = 13;

	/**
	 * The '<em><b>RADIATOR</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #RADIATOR
	 * @model literal="radiator"
	 * @generated
	 * @ordered
	 */
	public static final int RADIATOR_VALUE = 14;

	/**
	 * The '<em><b>REGISTER</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #REGISTER
	 * @model literal="register"
	 * @generated
	 * @ordered
	 */
	public static final int REGISTER_VALUE = 15;

	/**
	 * The '<em><b>GRILLE</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #GRILLE
	 * @model literal="grille"
	 * @generated
	 * @ordered
	 */
	public static final int GRILLE_VALUE = 16;

	/**
	 * The '<em><b>MIRROR</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #MIRROR
	 * @model literal="mirror"
	 * @generated
	 * @ordered
	 */
	public static final int MIRROR_VALUE = 17;

	/**
	 * The '<em><b>CABINET</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #CABINET
	 * @model literal="cabinet"
	 * @generated
	 * @ordered
	 */
	public static final int CABINET_VALUE = 18;

	/**
	 * The '<em><b>SHELF</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #SHELF
	 * @model literal="shelf"
	 * @generated
	 * @ordered
	 */
	public static final int SHELF_VALUE = 19;

	/**
	 * The '<em><b>ART</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #ART
	 * @model literal="art"
	 * @generated
	 * @ordered
	 */
	public static final int ART_VALUE = 20;

	/**
	 * The '<em><b>RANGE</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #RANGE
	 * @model literal="range"
	 * @generated
	 * @ordered
	 */
	public static final int RANGE_VALUE = 21;

	/**
	 * The '<em><b>COOKTOP</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #COOKTOP
	 * @model literal="cooktop"
	 * @generated
	 * @ordered
	 */
	public static final int COOKTOP_VALUE = 22;

	/**
	 * The '<em><b>HOOD</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #HOOD
	 * @model literal="hood"
	 * @generated
	 * @ordered
	 */
	public static final int HOOD_VALUE = 23;

	/**
	 * The '<em><b>APPLIANCE</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #APPLIANCE
	 * @model literal="appliance"
	 * @generated
	 * @ordered
	 */
	public static final int APPLIANCE_VALUE = 24;

	/**
	 * The '<em><b>WASHER</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #WASHER
	 * @model literal="washer"
	 * @generated
	 * @ordered
	 */
	public static final int WASHER_VALUE = 25;

	/**
	 * The '<em><b>FIREPLACE</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #FIREPLACE
	 * @model literal="fireplace"
	 * @generated
	 * @ordered
	 */
	public static final int FIREPLACE_VALUE = 26;

	/**
	 * The '<em><b>THERMOSTAT</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #THERMOSTAT
	 * @model literal="thermostat"
	 * @generated
	 * @ordered
	 */
	public static final int THERMOSTAT_VALUE = 27;

	/**
	 * The '<em><b>KEYPAD</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #KEYPAD
	 * @model literal="keypad"
	 * @generated
	 * @ordered
	 */
	public static final int KEYPAD_VALUE = 28;

	/**
	 * The '<em><b>HANDRAIL</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #HANDRAIL
	 * @model literal="handrail"
	 * @generated
	 * @ordered
	 */
	public static final int HANDRAIL_VALUE = 29;

	/**
	 * An array of all the '<em><b>Fixture Type</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final FixtureType[] VALUES_ARRAY =
		new FixtureType[] {
			TOILET,
			BIDET,
			VANITY,
			BASIN,
			SINK,
			TUB,
			SHOWER,
			TOWEL_BAR,
			TOWEL_RING,
			ROBE_HOOK,
			TP_HOLDER,
			GRAB_BAR,
			SCONCE,
			HEATER,
			RADIATOR,
			REGISTER,
			GRILLE,
			MIRROR,
			CABINET,
			SHELF,
			ART,
			RANGE,
			COOKTOP,
			HOOD,
			APPLIANCE,
			WASHER,
			FIREPLACE,
			THERMOSTAT,
			KEYPAD,
			HANDRAIL,
		};

	/**
	 * A public read-only list of all the '<em><b>Fixture Type</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<FixtureType> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Fixture Type</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static FixtureType get(String literal) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			FixtureType result = VALUES_ARRAY[i];
			if (result.toString().equals(literal)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Fixture Type</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static FixtureType getByName(String name) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			FixtureType result = VALUES_ARRAY[i];
			if (result.getName().equals(name)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Fixture Type</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static FixtureType get(int value) {
		switch (value) {
			case TOILET_VALUE: return TOILET;
			case BIDET_VALUE: return BIDET;
			case VANITY_VALUE: return VANITY;
			case BASIN_VALUE: return BASIN;
			case SINK_VALUE: return SINK;
			case TUB_VALUE: return TUB;
			case SHOWER_VALUE: return SHOWER;
			case TOWEL_BAR_VALUE: return TOWEL_BAR;
			case TOWEL_RING_VALUE: return TOWEL_RING;
			case ROBE_HOOK_VALUE: return ROBE_HOOK;
			case TP_HOLDER_VALUE: return TP_HOLDER;
			case GRAB_BAR_VALUE: return GRAB_BAR;
			case SCONCE_VALUE: return SCONCE;
			case HEATER_VALUE: return HEATER;
			case RADIATOR_VALUE: return RADIATOR;
			case REGISTER_VALUE: return REGISTER;
			case GRILLE_VALUE: return GRILLE;
			case MIRROR_VALUE: return MIRROR;
			case CABINET_VALUE: return CABINET;
			case SHELF_VALUE: return SHELF;
			case ART_VALUE: return ART;
			case RANGE_VALUE: return RANGE;
			case COOKTOP_VALUE: return COOKTOP;
			case HOOD_VALUE: return HOOD;
			case APPLIANCE_VALUE: return APPLIANCE;
			case WASHER_VALUE: return WASHER;
			case FIREPLACE_VALUE: return FIREPLACE;
			case THERMOSTAT_VALUE: return THERMOSTAT;
			case KEYPAD_VALUE: return KEYPAD;
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
	private FixtureType(int value, String name, String literal) {
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
	
} //FixtureType
