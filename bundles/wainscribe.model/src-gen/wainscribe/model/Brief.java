/**
 * SPDX-License-Identifier: EPL-2.0
 */
package wainscribe.model;

import org.eclipse.emf.common.util.EList;

import wainscribe.model.length.Length;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Brief</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * The decisions for a room or a whole home. Null attributes are not decided here: the home's brief, then the default of common practice holds.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link wainscribe.model.Brief#getPattern <em>Pattern</em>}</li>
 *   <li>{@link wainscribe.model.Brief#getRail <em>Rail</em>}</li>
 *   <li>{@link wainscribe.model.Brief#getRailFace <em>Rail Face</em>}</li>
 *   <li>{@link wainscribe.model.Brief#getRailThickness <em>Rail Thickness</em>}</li>
 *   <li>{@link wainscribe.model.Brief#getGap <em>Gap</em>}</li>
 *   <li>{@link wainscribe.model.Brief#getGapY <em>Gap Y</em>}</li>
 *   <li>{@link wainscribe.model.Brief#getFace <em>Face</em>}</li>
 *   <li>{@link wainscribe.model.Brief#getThickness <em>Thickness</em>}</li>
 *   <li>{@link wainscribe.model.Brief#getFrameWidthMin <em>Frame Width Min</em>}</li>
 *   <li>{@link wainscribe.model.Brief#getFrameWidthMax <em>Frame Width Max</em>}</li>
 *   <li>{@link wainscribe.model.Brief#getBase <em>Base</em>}</li>
 *   <li>{@link wainscribe.model.Brief#getCrown <em>Crown</em>}</li>
 *   <li>{@link wainscribe.model.Brief#getMaterial <em>Material</em>}</li>
 *   <li>{@link wainscribe.model.Brief#getStock <em>Stock</em>}</li>
 *   <li>{@link wainscribe.model.Brief#getNail <em>Nail</em>}</li>
 *   <li>{@link wainscribe.model.Brief#getBoard <em>Board</em>}</li>
 *   <li>{@link wainscribe.model.Brief#getBoardWalls <em>Board Walls</em>}</li>
 *   <li>{@link wainscribe.model.Brief#getProfiles <em>Profiles</em>}</li>
 *   <li>{@link wainscribe.model.Brief#getInside <em>Inside</em>}</li>
 *   <li>{@link wainscribe.model.Brief#getBaseAtCasing <em>Base At Casing</em>}</li>
 *   <li>{@link wainscribe.model.Brief#getSaw <em>Saw</em>}</li>
 *   <li>{@link wainscribe.model.Brief#getGlassLap <em>Glass Lap</em>}</li>
 *   <li>{@link wainscribe.model.Brief#getGlassClearance <em>Glass Clearance</em>}</li>
 * </ul>
 *
 * @see wainscribe.model.WainscribePackage#getBrief()
 * @model
 * @generated
 */
public interface Brief extends Element {
	/**
	 * Returns the value of the '<em><b>Pattern</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Id of the wall pattern, or none.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Pattern</em>' attribute.
	 * @see #setPattern(String)
	 * @see wainscribe.model.WainscribePackage#getBrief_Pattern()
	 * @model
	 * @generated
	 */
	String getPattern();

	/**
	 * Sets the value of the '{@link wainscribe.model.Brief#getPattern <em>Pattern</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Pattern</em>' attribute.
	 * @see #getPattern()
	 * @generated
	 */
	void setPattern(String value);

	/**
	 * Returns the value of the '<em><b>Rail</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Height of the top of the rail.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Rail</em>' attribute.
	 * @see #setRail(Length)
	 * @see wainscribe.model.WainscribePackage#getBrief_Rail()
	 * @model dataType="wainscribe.model.Length"
	 * @generated
	 */
	Length getRail();

	/**
	 * Sets the value of the '{@link wainscribe.model.Brief#getRail <em>Rail</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Rail</em>' attribute.
	 * @see #getRail()
	 * @generated
	 */
	void setRail(Length value);

	/**
	 * Returns the value of the '<em><b>Rail Face</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Face height of the rail.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Rail Face</em>' attribute.
	 * @see #setRailFace(Length)
	 * @see wainscribe.model.WainscribePackage#getBrief_RailFace()
	 * @model dataType="wainscribe.model.Length"
	 * @generated
	 */
	Length getRailFace();

	/**
	 * Sets the value of the '{@link wainscribe.model.Brief#getRailFace <em>Rail Face</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Rail Face</em>' attribute.
	 * @see #getRailFace()
	 * @generated
	 */
	void setRailFace(Length value);

	/**
	 * Returns the value of the '<em><b>Rail Thickness</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Projection of the rail.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Rail Thickness</em>' attribute.
	 * @see #setRailThickness(Length)
	 * @see wainscribe.model.WainscribePackage#getBrief_RailThickness()
	 * @model dataType="wainscribe.model.Length"
	 * @generated
	 */
	Length getRailThickness();

	/**
	 * Sets the value of the '{@link wainscribe.model.Brief#getRailThickness <em>Rail Thickness</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Rail Thickness</em>' attribute.
	 * @see #getRailThickness()
	 * @generated
	 */
	void setRailThickness(Length value);

	/**
	 * Returns the value of the '<em><b>Gap</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Clear distance between frames and at the ends of runs. Null: the layout chooses.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Gap</em>' attribute.
	 * @see #setGap(Length)
	 * @see wainscribe.model.WainscribePackage#getBrief_Gap()
	 * @model dataType="wainscribe.model.Length"
	 * @generated
	 */
	Length getGap();

	/**
	 * Sets the value of the '{@link wainscribe.model.Brief#getGap <em>Gap</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Gap</em>' attribute.
	 * @see #getGap()
	 * @generated
	 */
	void setGap(Length value);

	/**
	 * Returns the value of the '<em><b>Gap Y</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Clear distance above and below frames. Null: as gap.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Gap Y</em>' attribute.
	 * @see #setGapY(Length)
	 * @see wainscribe.model.WainscribePackage#getBrief_GapY()
	 * @model dataType="wainscribe.model.Length"
	 * @generated
	 */
	Length getGapY();

	/**
	 * Sets the value of the '{@link wainscribe.model.Brief#getGapY <em>Gap Y</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Gap Y</em>' attribute.
	 * @see #getGapY()
	 * @generated
	 */
	void setGapY(Length value);

	/**
	 * Returns the value of the '<em><b>Face</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Face width of the frame moulding.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Face</em>' attribute.
	 * @see #setFace(Length)
	 * @see wainscribe.model.WainscribePackage#getBrief_Face()
	 * @model dataType="wainscribe.model.Length"
	 * @generated
	 */
	Length getFace();

	/**
	 * Sets the value of the '{@link wainscribe.model.Brief#getFace <em>Face</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Face</em>' attribute.
	 * @see #getFace()
	 * @generated
	 */
	void setFace(Length value);

	/**
	 * Returns the value of the '<em><b>Thickness</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Projection of the frame moulding.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Thickness</em>' attribute.
	 * @see #setThickness(Length)
	 * @see wainscribe.model.WainscribePackage#getBrief_Thickness()
	 * @model dataType="wainscribe.model.Length"
	 * @generated
	 */
	Length getThickness();

	/**
	 * Sets the value of the '{@link wainscribe.model.Brief#getThickness <em>Thickness</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Thickness</em>' attribute.
	 * @see #getThickness()
	 * @generated
	 */
	void setThickness(Length value);

	/**
	 * Returns the value of the '<em><b>Frame Width Min</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Least frame width wished.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Frame Width Min</em>' attribute.
	 * @see #setFrameWidthMin(Length)
	 * @see wainscribe.model.WainscribePackage#getBrief_FrameWidthMin()
	 * @model dataType="wainscribe.model.Length"
	 * @generated
	 */
	Length getFrameWidthMin();

	/**
	 * Sets the value of the '{@link wainscribe.model.Brief#getFrameWidthMin <em>Frame Width Min</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Frame Width Min</em>' attribute.
	 * @see #getFrameWidthMin()
	 * @generated
	 */
	void setFrameWidthMin(Length value);

	/**
	 * Returns the value of the '<em><b>Frame Width Max</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Greatest frame width wished.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Frame Width Max</em>' attribute.
	 * @see #setFrameWidthMax(Length)
	 * @see wainscribe.model.WainscribePackage#getBrief_FrameWidthMax()
	 * @model dataType="wainscribe.model.Length"
	 * @generated
	 */
	Length getFrameWidthMax();

	/**
	 * Sets the value of the '{@link wainscribe.model.Brief#getFrameWidthMax <em>Frame Width Max</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Frame Width Max</em>' attribute.
	 * @see #getFrameWidthMax()
	 * @generated
	 */
	void setFrameWidthMax(Length value);

	/**
	 * Returns the value of the '<em><b>Base</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Face height of the new base, where none is kept.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Base</em>' attribute.
	 * @see #setBase(Length)
	 * @see wainscribe.model.WainscribePackage#getBrief_Base()
	 * @model dataType="wainscribe.model.Length"
	 * @generated
	 */
	Length getBase();

	/**
	 * Sets the value of the '{@link wainscribe.model.Brief#getBase <em>Base</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Base</em>' attribute.
	 * @see #getBase()
	 * @generated
	 */
	void setBase(Length value);

	/**
	 * Returns the value of the '<em><b>Crown</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How far the new crown comes down from the ceiling.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Crown</em>' attribute.
	 * @see #setCrown(Length)
	 * @see wainscribe.model.WainscribePackage#getBrief_Crown()
	 * @model dataType="wainscribe.model.Length"
	 * @generated
	 */
	Length getCrown();

	/**
	 * Sets the value of the '{@link wainscribe.model.Brief#getCrown <em>Crown</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Crown</em>' attribute.
	 * @see #getCrown()
	 * @generated
	 */
	void setCrown(Length value);

	/**
	 * Returns the value of the '<em><b>Material</b></em>' attribute.
	 * The literals are from the enumeration {@link wainscribe.model.Material}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What the mouldings are made of.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Material</em>' attribute.
	 * @see wainscribe.model.Material
	 * @see #setMaterial(Material)
	 * @see wainscribe.model.WainscribePackage#getBrief_Material()
	 * @model
	 * @generated
	 */
	Material getMaterial();

	/**
	 * Sets the value of the '{@link wainscribe.model.Brief#getMaterial <em>Material</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Material</em>' attribute.
	 * @see wainscribe.model.Material
	 * @see #getMaterial()
	 * @generated
	 */
	void setMaterial(Material value);

	/**
	 * Returns the value of the '<em><b>Stock</b></em>' attribute list.
	 * The list contents are of type {@link wainscribe.model.length.Length}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Lengths in which the mouldings are sold.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Stock</em>' attribute list.
	 * @see wainscribe.model.WainscribePackage#getBrief_Stock()
	 * @model dataType="wainscribe.model.Length"
	 * @generated
	 */
	EList<Length> getStock();

	/**
	 * Returns the value of the '<em><b>Nail</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Length of the nails.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Nail</em>' attribute.
	 * @see #setNail(Length)
	 * @see wainscribe.model.WainscribePackage#getBrief_Nail()
	 * @model dataType="wainscribe.model.Length"
	 * @generated
	 */
	Length getNail();

	/**
	 * Sets the value of the '{@link wainscribe.model.Brief#getNail <em>Nail</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Nail</em>' attribute.
	 * @see #getNail()
	 * @generated
	 */
	void setNail(Length value);

	/**
	 * Returns the value of the '<em><b>Board</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Thickness of boarding added to walls.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Board</em>' attribute.
	 * @see #setBoard(Length)
	 * @see wainscribe.model.WainscribePackage#getBrief_Board()
	 * @model dataType="wainscribe.model.Length"
	 * @generated
	 */
	Length getBoard();

	/**
	 * Sets the value of the '{@link wainscribe.model.Brief#getBoard <em>Board</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Board</em>' attribute.
	 * @see #getBoard()
	 * @generated
	 */
	void setBoard(Length value);

	/**
	 * Returns the value of the '<em><b>Board Walls</b></em>' attribute list.
	 * The list contents are of type {@link java.lang.String}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Names of the walls that are boarded.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Board Walls</em>' attribute list.
	 * @see wainscribe.model.WainscribePackage#getBrief_BoardWalls()
	 * @model
	 * @generated
	 */
	EList<String> getBoardWalls();

	/**
	 * Returns the value of the '<em><b>Profiles</b></em>' containment reference list.
	 * The list contents are of type {@link wainscribe.model.ProfileReference}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Profiles chosen from the catalogue.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Profiles</em>' containment reference list.
	 * @see wainscribe.model.WainscribePackage#getBrief_Profiles()
	 * @model containment="true"
	 * @generated
	 */
	EList<ProfileReference> getProfiles();

	/**
	 * Returns the value of the '<em><b>Inside</b></em>' attribute.
	 * The literals are from the enumeration {@link wainscribe.model.InsideJoint}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How new runs meet in inside corners.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Inside</em>' attribute.
	 * @see wainscribe.model.InsideJoint
	 * @see #setInside(InsideJoint)
	 * @see wainscribe.model.WainscribePackage#getBrief_Inside()
	 * @model
	 * @generated
	 */
	InsideJoint getInside();

	/**
	 * Sets the value of the '{@link wainscribe.model.Brief#getInside <em>Inside</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Inside</em>' attribute.
	 * @see wainscribe.model.InsideJoint
	 * @see #getInside()
	 * @generated
	 */
	void setInside(InsideJoint value);

	/**
	 * Returns the value of the '<em><b>Base At Casing</b></em>' attribute.
	 * The literals are from the enumeration {@link wainscribe.model.CasingJoint}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How base thicker than a casing meets it.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Base At Casing</em>' attribute.
	 * @see wainscribe.model.CasingJoint
	 * @see #setBaseAtCasing(CasingJoint)
	 * @see wainscribe.model.WainscribePackage#getBrief_BaseAtCasing()
	 * @model
	 * @generated
	 */
	CasingJoint getBaseAtCasing();

	/**
	 * Sets the value of the '{@link wainscribe.model.Brief#getBaseAtCasing <em>Base At Casing</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Base At Casing</em>' attribute.
	 * @see wainscribe.model.CasingJoint
	 * @see #getBaseAtCasing()
	 * @generated
	 */
	void setBaseAtCasing(CasingJoint value);

	/**
	 * Returns the value of the '<em><b>Saw</b></em>' attribute.
	 * The literals are from the enumeration {@link wainscribe.model.SawScale}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Scale of the saw that the settings are rounded to.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Saw</em>' attribute.
	 * @see wainscribe.model.SawScale
	 * @see #setSaw(SawScale)
	 * @see wainscribe.model.WainscribePackage#getBrief_Saw()
	 * @model
	 * @generated
	 */
	SawScale getSaw();

	/**
	 * Sets the value of the '{@link wainscribe.model.Brief#getSaw <em>Saw</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Saw</em>' attribute.
	 * @see wainscribe.model.SawScale
	 * @see #getSaw()
	 * @generated
	 */
	void setSaw(SawScale value);

	/**
	 * Returns the value of the '<em><b>Glass Lap</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How far the frame of a mirror laps over the glass on each side.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Glass Lap</em>' attribute.
	 * @see #setGlassLap(Length)
	 * @see wainscribe.model.WainscribePackage#getBrief_GlassLap()
	 * @model dataType="wainscribe.model.Length"
	 * @generated
	 */
	Length getGlassLap();

	/**
	 * Sets the value of the '{@link wainscribe.model.Brief#getGlassLap <em>Glass Lap</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Glass Lap</em>' attribute.
	 * @see #getGlassLap()
	 * @generated
	 */
	void setGlassLap(Length value);

	/**
	 * Returns the value of the '<em><b>Glass Clearance</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Play between the edge of a mirror and the rebate of its frame.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Glass Clearance</em>' attribute.
	 * @see #setGlassClearance(Length)
	 * @see wainscribe.model.WainscribePackage#getBrief_GlassClearance()
	 * @model dataType="wainscribe.model.Length"
	 * @generated
	 */
	Length getGlassClearance();

	/**
	 * Sets the value of the '{@link wainscribe.model.Brief#getGlassClearance <em>Glass Clearance</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Glass Clearance</em>' attribute.
	 * @see #getGlassClearance()
	 * @generated
	 */
	void setGlassClearance(Length value);

} // Brief
