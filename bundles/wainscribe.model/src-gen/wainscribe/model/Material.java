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
 * A representation of the literals of the enumeration '<em><b>Material</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * <!-- begin-model-doc -->
 * What mouldings are made of.
 * <!-- end-model-doc -->
 * @see wainscribe.model.WainscribePackage#getMaterial()
 * @model
 * @generated
 */
public enum Material implements Enumerator {
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
	 * The '<em><b>MDF</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #MDF_VALUE
	 * @generated
	 * @ordered
	 */
	MDF(1, "MDF", "mdf"),

	/**
	 * The '<em><b>MR MDF</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Moisture-resistant MDF.
	 * <!-- end-model-doc -->
	 * @see #MR_MDF_VALUE
	 * @generated
	 * @ordered
	 */
	MR_MDF(2, "MR_MDF", "mr-mdf"),

	/**
	 * The '<em><b>PINE</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #PINE_VALUE
	 * @generated
	 * @ordered
	 */
	PINE(3, "PINE", "pine"),

	/**
	 * The '<em><b>POPLAR</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #POPLAR_VALUE
	 * @generated
	 * @ordered
	 */
	POPLAR(4, "POPLAR", "poplar"),

	/**
	 * The '<em><b>PVC</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #PVC_VALUE
	 * @generated
	 * @ordered
	 */
	PVC(5, "PVC", "pvc"),

	/**
	 * The '<em><b>POLYURETHANE</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #POLYURETHANE_VALUE
	 * @generated
	 * @ordered
	 */
	POLYURETHANE(6, "POLYURETHANE", "polyurethane"),

	/**
	 * The '<em><b>PLASTER</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #PLASTER_VALUE
	 * @generated
	 * @ordered
	 */
	PLASTER(7, "PLASTER", "plaster"),

	/**
	 * The '<em><b>METAL</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #METAL_VALUE
	 * @generated
	 * @ordered
	 */
	METAL(8, "METAL", "metal");

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
	 * The '<em><b>MDF</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #MDF
	 * @model literal="mdf"
	 * @generated
	 * @ordered
	 */
	public static final int MDF_VALUE = 1;

	/**
	 * The '<em><b>MR MDF</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Moisture-resistant MDF.
	 * <!-- end-model-doc -->
	 * @see #MR_MDF
	 * @model literal="mr-mdf"
	 * @generated
	 * @ordered
	 */
	public static final int MR_MDF_VALUE = 2;

	/**
	 * The '<em><b>PINE</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #PINE
	 * @model literal="pine"
	 * @generated
	 * @ordered
	 */
	public static final int PINE_VALUE = 3;

	/**
	 * The '<em><b>POPLAR</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #POPLAR
	 * @model literal="poplar"
	 * @generated
	 * @ordered
	 */
	public static final int POPLAR_VALUE = 4;

	/**
	 * The '<em><b>PVC</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #PVC
	 * @model literal="pvc"
	 * @generated
	 * @ordered
	 */
	public static final int PVC_VALUE = 5;

	/**
	 * The '<em><b>POLYURETHANE</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #POLYURETHANE
	 * @model literal="polyurethane"
	 * @generated
	 * @ordered
	 */
	public static final int POLYURETHANE_VALUE = 6;

	/**
	 * The '<em><b>PLASTER</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #PLASTER
	 * @model literal="plaster"
	 * @generated
	 * @ordered
	 */
	public static final int PLASTER_VALUE = 7;

	/**
	 * The '<em><b>METAL</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #METAL
	 * @model literal="metal"
	 * @generated
	 * @ordered
	 */
	public static final int METAL_VALUE = 8;

	/**
	 * An array of all the '<em><b>Material</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final Material[] VALUES_ARRAY =
		new Material[] {
			UNRECORDED,
			MDF,
			MR_MDF,
			PINE,
			POPLAR,
			PVC,
			POLYURETHANE,
			PLASTER,
			METAL,
		};

	/**
	 * A public read-only list of all the '<em><b>Material</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<Material> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Material</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static Material get(String literal) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			Material result = VALUES_ARRAY[i];
			if (result.toString().equals(literal)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Material</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static Material getByName(String name) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			Material result = VALUES_ARRAY[i];
			if (result.getName().equals(name)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Material</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static Material get(int value) {
		switch (value) {
			case UNRECORDED_VALUE: return UNRECORDED;
			case MDF_VALUE: return MDF;
			case MR_MDF_VALUE: return MR_MDF;
			case PINE_VALUE: return PINE;
			case POPLAR_VALUE: return POPLAR;
			case PVC_VALUE: return PVC;
			case POLYURETHANE_VALUE: return POLYURETHANE;
			case PLASTER_VALUE: return PLASTER;
			case METAL_VALUE: return METAL;
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
	private Material(int value, String name, String literal) {
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
	
} //Material
