/**
 * SPDX-License-Identifier: EPL-2.0
 */
package wainscribe.model;

import wainscribe.model.length.Length;

import wainscribe.model.measure.Measure;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Fixture</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * Something fixed to or standing at the wall.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link wainscribe.model.Fixture#getType <em>Type</em>}</li>
 *   <li>{@link wainscribe.model.Fixture#getHeat <em>Heat</em>}</li>
 *   <li>{@link wainscribe.model.Fixture#getTankGap <em>Tank Gap</em>}</li>
 *   <li>{@link wainscribe.model.Fixture#getTankTop <em>Tank Top</em>}</li>
 *   <li>{@link wainscribe.model.Fixture#getWetEdge <em>Wet Edge</em>}</li>
 *   <li>{@link wainscribe.model.Fixture#getBehind <em>Behind</em>}</li>
 *   <li>{@link wainscribe.model.Fixture#getSupport <em>Support</em>}</li>
 *   <li>{@link wainscribe.model.Fixture#getFixing <em>Fixing</em>}</li>
 *   <li>{@link wainscribe.model.Fixture#getMass <em>Mass</em>}</li>
 *   <li>{@link wainscribe.model.Fixture#getLoad <em>Load</em>}</li>
 *   <li>{@link wainscribe.model.Fixture#getGap <em>Gap</em>}</li>
 *   <li>{@link wainscribe.model.Fixture#getOpeningX <em>Opening X</em>}</li>
 *   <li>{@link wainscribe.model.Fixture#getOpeningWidth <em>Opening Width</em>}</li>
 *   <li>{@link wainscribe.model.Fixture#getOpeningHeight <em>Opening Height</em>}</li>
 *   <li>{@link wainscribe.model.Fixture#getPlanned <em>Planned</em>}</li>
 *   <li>{@link wainscribe.model.Fixture#getFramed <em>Framed</em>}</li>
 * </ul>
 *
 * @see wainscribe.model.WainscribePackage#getFixture()
 * @model
 * @generated
 */
public interface Fixture extends Placed {
	/**
	 * Returns the value of the '<em><b>Type</b></em>' attribute.
	 * The literals are from the enumeration {@link wainscribe.model.FixtureType}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What it is.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Type</em>' attribute.
	 * @see wainscribe.model.FixtureType
	 * @see #setType(FixtureType)
	 * @see wainscribe.model.WainscribePackage#getFixture_Type()
	 * @model
	 * @generated
	 */
	FixtureType getType();

	/**
	 * Sets the value of the '{@link wainscribe.model.Fixture#getType <em>Type</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Type</em>' attribute.
	 * @see wainscribe.model.FixtureType
	 * @see #getType()
	 * @generated
	 */
	void setType(FixtureType value);

	/**
	 * Returns the value of the '<em><b>Heat</b></em>' attribute.
	 * The literals are from the enumeration {@link wainscribe.model.HeatSource}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What heats it.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Heat</em>' attribute.
	 * @see wainscribe.model.HeatSource
	 * @see #setHeat(HeatSource)
	 * @see wainscribe.model.WainscribePackage#getFixture_Heat()
	 * @model
	 * @generated
	 */
	HeatSource getHeat();

	/**
	 * Sets the value of the '{@link wainscribe.model.Fixture#getHeat <em>Heat</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Heat</em>' attribute.
	 * @see wainscribe.model.HeatSource
	 * @see #getHeat()
	 * @generated
	 */
	void setHeat(HeatSource value);

	/**
	 * Returns the value of the '<em><b>Tank Gap</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Gap between a toilet tank and the wall. Null: not measured.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Tank Gap</em>' attribute.
	 * @see #setTankGap(Length)
	 * @see wainscribe.model.WainscribePackage#getFixture_TankGap()
	 * @model dataType="wainscribe.model.Length"
	 * @generated
	 */
	Length getTankGap();

	/**
	 * Sets the value of the '{@link wainscribe.model.Fixture#getTankGap <em>Tank Gap</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Tank Gap</em>' attribute.
	 * @see #getTankGap()
	 * @generated
	 */
	void setTankGap(Length value);

	/**
	 * Returns the value of the '<em><b>Tank Top</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Height of the tank lid. Null: not measured.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Tank Top</em>' attribute.
	 * @see #setTankTop(Length)
	 * @see wainscribe.model.WainscribePackage#getFixture_TankTop()
	 * @model dataType="wainscribe.model.Length"
	 * @generated
	 */
	Length getTankTop();

	/**
	 * Sets the value of the '{@link wainscribe.model.Fixture#getTankTop <em>Tank Top</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Tank Top</em>' attribute.
	 * @see #getTankTop()
	 * @generated
	 */
	void setTankTop(Length value);

	/**
	 * Returns the value of the '<em><b>Wet Edge</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Distance from the edge where water is likely. Null: not measured.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Wet Edge</em>' attribute.
	 * @see #setWetEdge(Length)
	 * @see wainscribe.model.WainscribePackage#getFixture_WetEdge()
	 * @model dataType="wainscribe.model.Length"
	 * @generated
	 */
	Length getWetEdge();

	/**
	 * Sets the value of the '{@link wainscribe.model.Fixture#getWetEdge <em>Wet Edge</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Wet Edge</em>' attribute.
	 * @see #getWetEdge()
	 * @generated
	 */
	void setWetEdge(Length value);

	/**
	 * Returns the value of the '<em><b>Behind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * True: trim runs behind it, so it does not stop a run. Null: no.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Behind</em>' attribute.
	 * @see #setBehind(Boolean)
	 * @see wainscribe.model.WainscribePackage#getFixture_Behind()
	 * @model
	 * @generated
	 */
	Boolean getBehind();

	/**
	 * Sets the value of the '{@link wainscribe.model.Fixture#getBehind <em>Behind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Behind</em>' attribute.
	 * @see #getBehind()
	 * @generated
	 */
	void setBehind(Boolean value);

	/**
	 * Returns the value of the '<em><b>Support</b></em>' attribute.
	 * The literals are from the enumeration {@link wainscribe.model.Support}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What carries a mirror.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Support</em>' attribute.
	 * @see wainscribe.model.Support
	 * @see #setSupport(Support)
	 * @see wainscribe.model.WainscribePackage#getFixture_Support()
	 * @model
	 * @generated
	 */
	Support getSupport();

	/**
	 * Sets the value of the '{@link wainscribe.model.Fixture#getSupport <em>Support</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Support</em>' attribute.
	 * @see wainscribe.model.Support
	 * @see #getSupport()
	 * @generated
	 */
	void setSupport(Support value);

	/**
	 * Returns the value of the '<em><b>Fixing</b></em>' attribute.
	 * The literals are from the enumeration {@link wainscribe.model.Fixing}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How it is fixed.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Fixing</em>' attribute.
	 * @see wainscribe.model.Fixing
	 * @see #setFixing(Fixing)
	 * @see wainscribe.model.WainscribePackage#getFixture_Fixing()
	 * @model
	 * @generated
	 */
	Fixing getFixing();

	/**
	 * Sets the value of the '{@link wainscribe.model.Fixture#getFixing <em>Fixing</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Fixing</em>' attribute.
	 * @see wainscribe.model.Fixing
	 * @see #getFixing()
	 * @generated
	 */
	void setFixing(Fixing value);

	/**
	 * Returns the value of the '<em><b>Mass</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Own mass. Null: not known.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Mass</em>' attribute.
	 * @see #setMass(Measure)
	 * @see wainscribe.model.WainscribePackage#getFixture_Mass()
	 * @model dataType="wainscribe.model.Measure"
	 * @generated
	 */
	Measure getMass();

	/**
	 * Sets the value of the '{@link wainscribe.model.Fixture#getMass <em>Mass</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Mass</em>' attribute.
	 * @see #getMass()
	 * @generated
	 */
	void setMass(Measure value);

	/**
	 * Returns the value of the '<em><b>Load</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What it has to carry. Null: not known.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Load</em>' attribute.
	 * @see #setLoad(Measure)
	 * @see wainscribe.model.WainscribePackage#getFixture_Load()
	 * @model dataType="wainscribe.model.Measure"
	 * @generated
	 */
	Measure getLoad();

	/**
	 * Sets the value of the '{@link wainscribe.model.Fixture#getLoad <em>Load</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Load</em>' attribute.
	 * @see #getLoad()
	 * @generated
	 */
	void setLoad(Measure value);

	/**
	 * Returns the value of the '<em><b>Gap</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Gap to the wall. Null: not measured.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Gap</em>' attribute.
	 * @see #setGap(Length)
	 * @see wainscribe.model.WainscribePackage#getFixture_Gap()
	 * @model dataType="wainscribe.model.Length"
	 * @generated
	 */
	Length getGap();

	/**
	 * Sets the value of the '{@link wainscribe.model.Fixture#getGap <em>Gap</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Gap</em>' attribute.
	 * @see #getGap()
	 * @generated
	 */
	void setGap(Length value);

	/**
	 * Returns the value of the '<em><b>Opening X</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Of a fireplace: left edge of the fire opening, from the left end of the wall.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Opening X</em>' attribute.
	 * @see #setOpeningX(Length)
	 * @see wainscribe.model.WainscribePackage#getFixture_OpeningX()
	 * @model dataType="wainscribe.model.Length"
	 * @generated
	 */
	Length getOpeningX();

	/**
	 * Sets the value of the '{@link wainscribe.model.Fixture#getOpeningX <em>Opening X</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Opening X</em>' attribute.
	 * @see #getOpeningX()
	 * @generated
	 */
	void setOpeningX(Length value);

	/**
	 * Returns the value of the '<em><b>Opening Width</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Of a fireplace: width of the fire opening.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Opening Width</em>' attribute.
	 * @see #setOpeningWidth(Length)
	 * @see wainscribe.model.WainscribePackage#getFixture_OpeningWidth()
	 * @model dataType="wainscribe.model.Length"
	 * @generated
	 */
	Length getOpeningWidth();

	/**
	 * Sets the value of the '{@link wainscribe.model.Fixture#getOpeningWidth <em>Opening Width</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Opening Width</em>' attribute.
	 * @see #getOpeningWidth()
	 * @generated
	 */
	void setOpeningWidth(Length value);

	/**
	 * Returns the value of the '<em><b>Opening Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Of a fireplace: height of the fire opening.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Opening Height</em>' attribute.
	 * @see #setOpeningHeight(Length)
	 * @see wainscribe.model.WainscribePackage#getFixture_OpeningHeight()
	 * @model dataType="wainscribe.model.Length"
	 * @generated
	 */
	Length getOpeningHeight();

	/**
	 * Sets the value of the '{@link wainscribe.model.Fixture#getOpeningHeight <em>Opening Height</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Opening Height</em>' attribute.
	 * @see #getOpeningHeight()
	 * @generated
	 */
	void setOpeningHeight(Length value);

	/**
	 * Returns the value of the '<em><b>Planned</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * True: not there yet, part of the design. Null: it is there.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Planned</em>' attribute.
	 * @see #setPlanned(Boolean)
	 * @see wainscribe.model.WainscribePackage#getFixture_Planned()
	 * @model
	 * @generated
	 */
	Boolean getPlanned();

	/**
	 * Sets the value of the '{@link wainscribe.model.Fixture#getPlanned <em>Planned</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Planned</em>' attribute.
	 * @see #getPlanned()
	 * @generated
	 */
	void setPlanned(Boolean value);

	/**
	 * Returns the value of the '<em><b>Framed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * True: a mirror that gets a frame of moulding round its glass.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Framed</em>' attribute.
	 * @see #setFramed(Boolean)
	 * @see wainscribe.model.WainscribePackage#getFixture_Framed()
	 * @model
	 * @generated
	 */
	Boolean getFramed();

	/**
	 * Sets the value of the '{@link wainscribe.model.Fixture#getFramed <em>Framed</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Framed</em>' attribute.
	 * @see #getFramed()
	 * @generated
	 */
	void setFramed(Boolean value);

} // Fixture
