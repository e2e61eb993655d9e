/**
 * SPDX-License-Identifier: EPL-2.0
 */
package wainscribe.model;

import java.math.BigDecimal;

import org.eclipse.emf.common.util.EList;

import wainscribe.model.length.Length;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Wall</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A straight stretch of wall seen from inside. In its elevation x runs from its left end and y up from the finished floor.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link wainscribe.model.Wall#getRoom <em>Room</em>}</li>
 *   <li>{@link wainscribe.model.Wall#getLength <em>Length</em>}</li>
 *   <li>{@link wainscribe.model.Wall#getHeight <em>Height</em>}</li>
 *   <li>{@link wainscribe.model.Wall#getHeightRight <em>Height Right</em>}</li>
 *   <li>{@link wainscribe.model.Wall#getFloorRight <em>Floor Right</em>}</li>
 *   <li>{@link wainscribe.model.Wall#getAngle <em>Angle</em>}</li>
 *   <li>{@link wainscribe.model.Wall#getBow <em>Bow</em>}</li>
 *   <li>{@link wainscribe.model.Wall#getPlumbing <em>Plumbing</em>}</li>
 *   <li>{@link wainscribe.model.Wall#getRated <em>Rated</em>}</li>
 *   <li>{@link wainscribe.model.Wall#getWallboard <em>Wallboard</em>}</li>
 *   <li>{@link wainscribe.model.Wall#getStudSpacing <em>Stud Spacing</em>}</li>
 *   <li>{@link wainscribe.model.Wall#getStudSpacingUnknown <em>Stud Spacing Unknown</em>}</li>
 *   <li>{@link wainscribe.model.Wall#getCorner <em>Corner</em>}</li>
 *   <li>{@link wainscribe.model.Wall#getOpenings <em>Openings</em>}</li>
 *   <li>{@link wainscribe.model.Wall#getFixtures <em>Fixtures</em>}</li>
 *   <li>{@link wainscribe.model.Wall#getBoxes <em>Boxes</em>}</li>
 *   <li>{@link wainscribe.model.Wall#getTrims <em>Trims</em>}</li>
 *   <li>{@link wainscribe.model.Wall#getServices <em>Services</em>}</li>
 *   <li>{@link wainscribe.model.Wall#getPlacedFrames <em>Placed Frames</em>}</li>
 *   <li>{@link wainscribe.model.Wall#getAxes <em>Axes</em>}</li>
 *   <li>{@link wainscribe.model.Wall#getGuides <em>Guides</em>}</li>
 * </ul>
 *
 * @see wainscribe.model.WainscribePackage#getWall()
 * @model
 * @generated
 */
public interface Wall extends Element {
	/**
	 * Returns the value of the '<em><b>Room</b></em>' container reference.
	 * It is bidirectional and its opposite is '{@link wainscribe.model.Room#getWalls <em>Walls</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The room this wall belongs to.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Room</em>' container reference.
	 * @see #setRoom(Room)
	 * @see wainscribe.model.WainscribePackage#getWall_Room()
	 * @see wainscribe.model.Room#getWalls
	 * @model opposite="walls"
	 * @generated
	 */
	Room getRoom();

	/**
	 * Sets the value of the '{@link wainscribe.model.Wall#getRoom <em>Room</em>}' container reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Room</em>' container reference.
	 * @see #getRoom()
	 * @generated
	 */
	void setRoom(Room value);

	/**
	 * Returns the value of the '<em><b>Length</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Length along the floor. Never null in a saved room.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Length</em>' attribute.
	 * @see #setLength(Length)
	 * @see wainscribe.model.WainscribePackage#getWall_Length()
	 * @model dataType="wainscribe.model.Length"
	 * @generated
	 */
	Length getLength();

	/**
	 * Sets the value of the '{@link wainscribe.model.Wall#getLength <em>Length</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Length</em>' attribute.
	 * @see #getLength()
	 * @generated
	 */
	void setLength(Length value);

	/**
	 * Returns the value of the '<em><b>Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Ceiling height at the left end. Null: the room's height.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Height</em>' attribute.
	 * @see #setHeight(Length)
	 * @see wainscribe.model.WainscribePackage#getWall_Height()
	 * @model dataType="wainscribe.model.Length"
	 * @generated
	 */
	Length getHeight();

	/**
	 * Sets the value of the '{@link wainscribe.model.Wall#getHeight <em>Height</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Height</em>' attribute.
	 * @see #getHeight()
	 * @generated
	 */
	void setHeight(Length value);

	/**
	 * Returns the value of the '<em><b>Height Right</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Ceiling height at the right end, above the floor line there. Null: the same as at the left.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Height Right</em>' attribute.
	 * @see #setHeightRight(Length)
	 * @see wainscribe.model.WainscribePackage#getWall_HeightRight()
	 * @model dataType="wainscribe.model.Length"
	 * @generated
	 */
	Length getHeightRight();

	/**
	 * Sets the value of the '{@link wainscribe.model.Wall#getHeightRight <em>Height Right</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Height Right</em>' attribute.
	 * @see #getHeightRight()
	 * @generated
	 */
	void setHeightRight(Length value);

	/**
	 * Returns the value of the '<em><b>Floor Right</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How far the floor or nosing line at the right end lies above the left end. Null: level.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Floor Right</em>' attribute.
	 * @see #setFloorRight(Length)
	 * @see wainscribe.model.WainscribePackage#getWall_FloorRight()
	 * @model dataType="wainscribe.model.Length"
	 * @generated
	 */
	Length getFloorRight();

	/**
	 * Sets the value of the '{@link wainscribe.model.Wall#getFloorRight <em>Floor Right</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Floor Right</em>' attribute.
	 * @see #getFloorRight()
	 * @generated
	 */
	void setFloorRight(Length value);

	/**
	 * Returns the value of the '<em><b>Angle</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Inside angle in degrees to the next wall, above 0 and under 360. Null: not measured, taken as 90.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Angle</em>' attribute.
	 * @see #setAngle(BigDecimal)
	 * @see wainscribe.model.WainscribePackage#getWall_Angle()
	 * @model
	 * @generated
	 */
	BigDecimal getAngle();

	/**
	 * Sets the value of the '{@link wainscribe.model.Wall#getAngle <em>Angle</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Angle</em>' attribute.
	 * @see #getAngle()
	 * @generated
	 */
	void setAngle(BigDecimal value);

	/**
	 * Returns the value of the '<em><b>Bow</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Deviation from straight. Null: not measured.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Bow</em>' attribute.
	 * @see #setBow(Length)
	 * @see wainscribe.model.WainscribePackage#getWall_Bow()
	 * @model dataType="wainscribe.model.Length"
	 * @generated
	 */
	Length getBow();

	/**
	 * Sets the value of the '{@link wainscribe.model.Wall#getBow <em>Bow</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Bow</em>' attribute.
	 * @see #getBow()
	 * @generated
	 */
	void setBow(Length value);

	/**
	 * Returns the value of the '<em><b>Plumbing</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Pipes run in this wall. Null: not recorded.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Plumbing</em>' attribute.
	 * @see #setPlumbing(Boolean)
	 * @see wainscribe.model.WainscribePackage#getWall_Plumbing()
	 * @model
	 * @generated
	 */
	Boolean getPlumbing();

	/**
	 * Sets the value of the '{@link wainscribe.model.Wall#getPlumbing <em>Plumbing</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Plumbing</em>' attribute.
	 * @see #getPlumbing()
	 * @generated
	 */
	void setPlumbing(Boolean value);

	/**
	 * Returns the value of the '<em><b>Rated</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Fire-rated wall. Null: not recorded.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Rated</em>' attribute.
	 * @see #setRated(Boolean)
	 * @see wainscribe.model.WainscribePackage#getWall_Rated()
	 * @model
	 * @generated
	 */
	Boolean getRated();

	/**
	 * Sets the value of the '{@link wainscribe.model.Wall#getRated <em>Rated</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Rated</em>' attribute.
	 * @see #getRated()
	 * @generated
	 */
	void setRated(Boolean value);

	/**
	 * Returns the value of the '<em><b>Wallboard</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Thickness of the wallboard. Null: not measured.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Wallboard</em>' attribute.
	 * @see #setWallboard(Length)
	 * @see wainscribe.model.WainscribePackage#getWall_Wallboard()
	 * @model dataType="wainscribe.model.Length"
	 * @generated
	 */
	Length getWallboard();

	/**
	 * Sets the value of the '{@link wainscribe.model.Wall#getWallboard <em>Wallboard</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Wallboard</em>' attribute.
	 * @see #getWallboard()
	 * @generated
	 */
	void setWallboard(Length value);

	/**
	 * Returns the value of the '<em><b>Stud Spacing</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Distance between stud centres. Null: unknown or not recorded.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Stud Spacing</em>' attribute.
	 * @see #setStudSpacing(Length)
	 * @see wainscribe.model.WainscribePackage#getWall_StudSpacing()
	 * @model dataType="wainscribe.model.Length"
	 * @generated
	 */
	Length getStudSpacing();

	/**
	 * Sets the value of the '{@link wainscribe.model.Wall#getStudSpacing <em>Stud Spacing</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Stud Spacing</em>' attribute.
	 * @see #getStudSpacing()
	 * @generated
	 */
	void setStudSpacing(Length value);

	/**
	 * Returns the value of the '<em><b>Stud Spacing Unknown</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * True: the survey says that it is unknown.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Stud Spacing Unknown</em>' attribute.
	 * @see #setStudSpacingUnknown(Boolean)
	 * @see wainscribe.model.WainscribePackage#getWall_StudSpacingUnknown()
	 * @model
	 * @generated
	 */
	Boolean getStudSpacingUnknown();

	/**
	 * Sets the value of the '{@link wainscribe.model.Wall#getStudSpacingUnknown <em>Stud Spacing Unknown</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Stud Spacing Unknown</em>' attribute.
	 * @see #getStudSpacingUnknown()
	 * @generated
	 */
	void setStudSpacingUnknown(Boolean value);

	/**
	 * Returns the value of the '<em><b>Corner</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How the corner at the right end was measured. Null: only by angle, or not.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Corner</em>' containment reference.
	 * @see #setCorner(Corner)
	 * @see wainscribe.model.WainscribePackage#getWall_Corner()
	 * @model containment="true"
	 * @generated
	 */
	Corner getCorner();

	/**
	 * Sets the value of the '{@link wainscribe.model.Wall#getCorner <em>Corner</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Corner</em>' containment reference.
	 * @see #getCorner()
	 * @generated
	 */
	void setCorner(Corner value);

	/**
	 * Returns the value of the '<em><b>Openings</b></em>' containment reference list.
	 * The list contents are of type {@link wainscribe.model.Opening}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Doors and windows.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Openings</em>' containment reference list.
	 * @see wainscribe.model.WainscribePackage#getWall_Openings()
	 * @model containment="true"
	 * @generated
	 */
	EList<Opening> getOpenings();

	/**
	 * Returns the value of the '<em><b>Fixtures</b></em>' containment reference list.
	 * The list contents are of type {@link wainscribe.model.Fixture}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Things fixed to or standing at the wall.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Fixtures</em>' containment reference list.
	 * @see wainscribe.model.WainscribePackage#getWall_Fixtures()
	 * @model containment="true"
	 * @generated
	 */
	EList<Fixture> getFixtures();

	/**
	 * Returns the value of the '<em><b>Boxes</b></em>' containment reference list.
	 * The list contents are of type {@link wainscribe.model.Box}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Electrical boxes.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Boxes</em>' containment reference list.
	 * @see wainscribe.model.WainscribePackage#getWall_Boxes()
	 * @model containment="true"
	 * @generated
	 */
	EList<Box> getBoxes();

	/**
	 * Returns the value of the '<em><b>Trims</b></em>' containment reference list.
	 * The list contents are of type {@link wainscribe.model.ExistingTrim}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Mouldings that are on the wall now.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Trims</em>' containment reference list.
	 * @see wainscribe.model.WainscribePackage#getWall_Trims()
	 * @model containment="true"
	 * @generated
	 */
	EList<ExistingTrim> getTrims();

	/**
	 * Returns the value of the '<em><b>Services</b></em>' containment reference list.
	 * The list contents are of type {@link wainscribe.model.Service}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Studs, pipes and cables in the wall.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Services</em>' containment reference list.
	 * @see wainscribe.model.WainscribePackage#getWall_Services()
	 * @model containment="true"
	 * @generated
	 */
	EList<Service> getServices();

	/**
	 * Returns the value of the '<em><b>Placed Frames</b></em>' containment reference list.
	 * The list contents are of type {@link wainscribe.model.PlacedFrame}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Frames placed and locked by hand; a tier that has any holds exactly those.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Placed Frames</em>' containment reference list.
	 * @see wainscribe.model.WainscribePackage#getWall_PlacedFrames()
	 * @model containment="true"
	 * @generated
	 */
	EList<PlacedFrame> getPlacedFrames();

	/**
	 * Returns the value of the '<em><b>Axes</b></em>' containment reference list.
	 * The list contents are of type {@link wainscribe.model.Axis}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Axes marked by the designer, which the layout is compared with.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Axes</em>' containment reference list.
	 * @see wainscribe.model.WainscribePackage#getWall_Axes()
	 * @model containment="true"
	 * @generated
	 */
	EList<Axis> getAxes();

	/**
	 * Returns the value of the '<em><b>Guides</b></em>' containment reference list.
	 * The list contents are of type {@link wainscribe.model.Guide}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Plumb guides of this wall, by their distance from its left end.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Guides</em>' containment reference list.
	 * @see wainscribe.model.WainscribePackage#getWall_Guides()
	 * @model containment="true"
	 * @generated
	 */
	EList<Guide> getGuides();

} // Wall
