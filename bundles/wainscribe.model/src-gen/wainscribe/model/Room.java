/**
 * SPDX-License-Identifier: EPL-2.0
 */
package wainscribe.model;

import org.eclipse.emf.common.util.EList;

import wainscribe.model.length.Length;

import wainscribe.model.measure.Measure;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Room</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * One room as measured, with the decisions taken for it. Walls stand in walking order, clockwise seen from above, you inside.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link wainscribe.model.Room#getFormatVersion <em>Format Version</em>}</li>
 *   <li>{@link wainscribe.model.Room#getUse <em>Use</em>}</li>
 *   <li>{@link wainscribe.model.Room#getHeight <em>Height</em>}</li>
 *   <li>{@link wainscribe.model.Room#getAir <em>Air</em>}</li>
 *   <li>{@link wainscribe.model.Room#getHumidity <em>Humidity</em>}</li>
 *   <li>{@link wainscribe.model.Room#getSurfaceTemperature <em>Surface Temperature</em>}</li>
 *   <li>{@link wainscribe.model.Room#getFan <em>Fan</em>}</li>
 *   <li>{@link wainscribe.model.Room#getFanOutlet <em>Fan Outlet</em>}</li>
 *   <li>{@link wainscribe.model.Room#getFanMode <em>Fan Mode</em>}</li>
 *   <li>{@link wainscribe.model.Room#getOpen <em>Open</em>}</li>
 *   <li>{@link wainscribe.model.Room#getWalls <em>Walls</em>}</li>
 *   <li>{@link wainscribe.model.Room#getDiagonals <em>Diagonals</em>}</li>
 *   <li>{@link wainscribe.model.Room#getFinishes <em>Finishes</em>}</li>
 *   <li>{@link wainscribe.model.Room#getBrief <em>Brief</em>}</li>
 *   <li>{@link wainscribe.model.Room#getPaints <em>Paints</em>}</li>
 *   <li>{@link wainscribe.model.Room#getGuides <em>Guides</em>}</li>
 * </ul>
 *
 * @see wainscribe.model.WainscribePackage#getRoom()
 * @model
 * @generated
 */
public interface Room extends Element {
	/**
	 * Returns the value of the '<em><b>Format Version</b></em>' attribute.
	 * The default value is <code>"1"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Version of the file format, 1 for this model.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Format Version</em>' attribute.
	 * @see #setFormatVersion(int)
	 * @see wainscribe.model.WainscribePackage#getRoom_FormatVersion()
	 * @model default="1"
	 * @generated
	 */
	int getFormatVersion();

	/**
	 * Sets the value of the '{@link wainscribe.model.Room#getFormatVersion <em>Format Version</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Format Version</em>' attribute.
	 * @see #getFormatVersion()
	 * @generated
	 */
	void setFormatVersion(int value);

	/**
	 * Returns the value of the '<em><b>Use</b></em>' attribute.
	 * The literals are from the enumeration {@link wainscribe.model.RoomUse}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What the room is used for.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Use</em>' attribute.
	 * @see wainscribe.model.RoomUse
	 * @see #setUse(RoomUse)
	 * @see wainscribe.model.WainscribePackage#getRoom_Use()
	 * @model
	 * @generated
	 */
	RoomUse getUse();

	/**
	 * Sets the value of the '{@link wainscribe.model.Room#getUse <em>Use</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Use</em>' attribute.
	 * @see wainscribe.model.RoomUse
	 * @see #getUse()
	 * @generated
	 */
	void setUse(RoomUse value);

	/**
	 * Returns the value of the '<em><b>Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Ceiling height from the finished floor. Null: not measured.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Height</em>' attribute.
	 * @see #setHeight(Length)
	 * @see wainscribe.model.WainscribePackage#getRoom_Height()
	 * @model dataType="wainscribe.model.Length"
	 * @generated
	 */
	Length getHeight();

	/**
	 * Sets the value of the '{@link wainscribe.model.Room#getHeight <em>Height</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Height</em>' attribute.
	 * @see #getHeight()
	 * @generated
	 */
	void setHeight(Length value);

	/**
	 * Returns the value of the '<em><b>Air</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Air temperature while surveyed. Null: not measured.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Air</em>' attribute.
	 * @see #setAir(Measure)
	 * @see wainscribe.model.WainscribePackage#getRoom_Air()
	 * @model dataType="wainscribe.model.Measure"
	 * @generated
	 */
	Measure getAir();

	/**
	 * Sets the value of the '{@link wainscribe.model.Room#getAir <em>Air</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Air</em>' attribute.
	 * @see #getAir()
	 * @generated
	 */
	void setAir(Measure value);

	/**
	 * Returns the value of the '<em><b>Humidity</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Relative humidity while surveyed, in per cent. Null: not measured.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Humidity</em>' attribute.
	 * @see #setHumidity(Measure)
	 * @see wainscribe.model.WainscribePackage#getRoom_Humidity()
	 * @model dataType="wainscribe.model.Measure"
	 * @generated
	 */
	Measure getHumidity();

	/**
	 * Sets the value of the '{@link wainscribe.model.Room#getHumidity <em>Humidity</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Humidity</em>' attribute.
	 * @see #getHumidity()
	 * @generated
	 */
	void setHumidity(Measure value);

	/**
	 * Returns the value of the '<em><b>Surface Temperature</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Temperature of the coldest wall face. Null: not measured.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Surface Temperature</em>' attribute.
	 * @see #setSurfaceTemperature(Measure)
	 * @see wainscribe.model.WainscribePackage#getRoom_SurfaceTemperature()
	 * @model dataType="wainscribe.model.Measure"
	 * @generated
	 */
	Measure getSurfaceTemperature();

	/**
	 * Sets the value of the '{@link wainscribe.model.Room#getSurfaceTemperature <em>Surface Temperature</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Surface Temperature</em>' attribute.
	 * @see #getSurfaceTemperature()
	 * @generated
	 */
	void setSurfaceTemperature(Measure value);

	/**
	 * Returns the value of the '<em><b>Fan</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Rated flow of the exhaust fan. Null: not recorded.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Fan</em>' attribute.
	 * @see #setFan(Measure)
	 * @see wainscribe.model.WainscribePackage#getRoom_Fan()
	 * @model dataType="wainscribe.model.Measure"
	 * @generated
	 */
	Measure getFan();

	/**
	 * Sets the value of the '{@link wainscribe.model.Room#getFan <em>Fan</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Fan</em>' attribute.
	 * @see #getFan()
	 * @generated
	 */
	void setFan(Measure value);

	/**
	 * Returns the value of the '<em><b>Fan Outlet</b></em>' attribute.
	 * The literals are from the enumeration {@link wainscribe.model.FanOutlet}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Where the fan blows.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Fan Outlet</em>' attribute.
	 * @see wainscribe.model.FanOutlet
	 * @see #setFanOutlet(FanOutlet)
	 * @see wainscribe.model.WainscribePackage#getRoom_FanOutlet()
	 * @model
	 * @generated
	 */
	FanOutlet getFanOutlet();

	/**
	 * Sets the value of the '{@link wainscribe.model.Room#getFanOutlet <em>Fan Outlet</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Fan Outlet</em>' attribute.
	 * @see wainscribe.model.FanOutlet
	 * @see #getFanOutlet()
	 * @generated
	 */
	void setFanOutlet(FanOutlet value);

	/**
	 * Returns the value of the '<em><b>Fan Mode</b></em>' attribute.
	 * The literals are from the enumeration {@link wainscribe.model.FanMode}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How the fan runs.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Fan Mode</em>' attribute.
	 * @see wainscribe.model.FanMode
	 * @see #setFanMode(FanMode)
	 * @see wainscribe.model.WainscribePackage#getRoom_FanMode()
	 * @model
	 * @generated
	 */
	FanMode getFanMode();

	/**
	 * Sets the value of the '{@link wainscribe.model.Room#getFanMode <em>Fan Mode</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Fan Mode</em>' attribute.
	 * @see wainscribe.model.FanMode
	 * @see #getFanMode()
	 * @generated
	 */
	void setFanMode(FanMode value);

	/**
	 * Returns the value of the '<em><b>Open</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * True: the measured walls do not close, so no closure is computed. Null: not said, they close.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Open</em>' attribute.
	 * @see #setOpen(Boolean)
	 * @see wainscribe.model.WainscribePackage#getRoom_Open()
	 * @model
	 * @generated
	 */
	Boolean getOpen();

	/**
	 * Sets the value of the '{@link wainscribe.model.Room#getOpen <em>Open</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Open</em>' attribute.
	 * @see #getOpen()
	 * @generated
	 */
	void setOpen(Boolean value);

	/**
	 * Returns the value of the '<em><b>Walls</b></em>' containment reference list.
	 * The list contents are of type {@link wainscribe.model.Wall}.
	 * It is bidirectional and its opposite is '{@link wainscribe.model.Wall#getRoom <em>Room</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The walls in walking order.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Walls</em>' containment reference list.
	 * @see wainscribe.model.WainscribePackage#getRoom_Walls()
	 * @see wainscribe.model.Wall#getRoom
	 * @model opposite="room" containment="true"
	 * @generated
	 */
	EList<Wall> getWalls();

	/**
	 * Returns the value of the '<em><b>Diagonals</b></em>' containment reference list.
	 * The list contents are of type {@link wainscribe.model.Diagonal}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Distances measured across the floor.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Diagonals</em>' containment reference list.
	 * @see wainscribe.model.WainscribePackage#getRoom_Diagonals()
	 * @model containment="true"
	 * @generated
	 */
	EList<Diagonal> getDiagonals();

	/**
	 * Returns the value of the '<em><b>Finishes</b></em>' containment reference list.
	 * The list contents are of type {@link wainscribe.model.Finish}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Coatings that are on the surfaces now.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Finishes</em>' containment reference list.
	 * @see wainscribe.model.WainscribePackage#getRoom_Finishes()
	 * @model containment="true"
	 * @generated
	 */
	EList<Finish> getFinishes();

	/**
	 * Returns the value of the '<em><b>Brief</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Decisions for this room. Null: the home's hold.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Brief</em>' containment reference.
	 * @see #setBrief(Brief)
	 * @see wainscribe.model.WainscribePackage#getRoom_Brief()
	 * @model containment="true"
	 * @generated
	 */
	Brief getBrief();

	/**
	 * Sets the value of the '{@link wainscribe.model.Room#getBrief <em>Brief</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Brief</em>' containment reference.
	 * @see #getBrief()
	 * @generated
	 */
	void setBrief(Brief value);

	/**
	 * Returns the value of the '<em><b>Paints</b></em>' containment reference list.
	 * The list contents are of type {@link wainscribe.model.Paint}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Paints decided for this room.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Paints</em>' containment reference list.
	 * @see wainscribe.model.WainscribePackage#getRoom_Paints()
	 * @model containment="true"
	 * @generated
	 */
	EList<Paint> getPaints();

	/**
	 * Returns the value of the '<em><b>Guides</b></em>' containment reference list.
	 * The list contents are of type {@link wainscribe.model.Guide}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Level guides of all walls, by their height above the finished floor.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Guides</em>' containment reference list.
	 * @see wainscribe.model.WainscribePackage#getRoom_Guides()
	 * @model containment="true"
	 * @generated
	 */
	EList<Guide> getGuides();

} // Room
