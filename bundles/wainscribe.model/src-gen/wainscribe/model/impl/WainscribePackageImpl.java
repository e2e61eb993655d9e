/**
 * SPDX-License-Identifier: EPL-2.0
 */
package wainscribe.model.impl;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EDataType;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EPackage;
import org.eclipse.emf.ecore.EReference;

import org.eclipse.emf.ecore.impl.EPackageImpl;

import wainscribe.model.Axis;
import wainscribe.model.Binder;
import wainscribe.model.Box;
import wainscribe.model.BoxType;
import wainscribe.model.Brief;
import wainscribe.model.CasingJoint;
import wainscribe.model.Corner;
import wainscribe.model.CutBar;
import wainscribe.model.CutPiece;
import wainscribe.model.Diagonal;
import wainscribe.model.Element;
import wainscribe.model.ExistingTrim;
import wainscribe.model.FanMode;
import wainscribe.model.FanOutlet;
import wainscribe.model.Finish;
import wainscribe.model.Fixing;
import wainscribe.model.Fixture;
import wainscribe.model.FixtureType;
import wainscribe.model.Glazing;
import wainscribe.model.GlossLevel;
import wainscribe.model.Guide;
import wainscribe.model.HeatSource;
import wainscribe.model.Home;
import wainscribe.model.InsideJoint;
import wainscribe.model.Material;
import wainscribe.model.Opening;
import wainscribe.model.OpeningKind;
import wainscribe.model.Paint;
import wainscribe.model.Placed;
import wainscribe.model.PlacedFrame;
import wainscribe.model.Price;
import wainscribe.model.PriceUnit;
import wainscribe.model.Primer;
import wainscribe.model.ProfileReference;
import wainscribe.model.ProfileUse;
import wainscribe.model.ReferenceLine;
import wainscribe.model.Room;
import wainscribe.model.RoomUse;
import wainscribe.model.SawScale;
import wainscribe.model.Service;
import wainscribe.model.ServiceKind;
import wainscribe.model.Soundness;
import wainscribe.model.StoredOffcut;
import wainscribe.model.Substrate;
import wainscribe.model.Support;
import wainscribe.model.Surface;
import wainscribe.model.SurfaceZone;
import wainscribe.model.Swing;
import wainscribe.model.TrimType;
import wainscribe.model.WainscribeFactory;
import wainscribe.model.WainscribePackage;
import wainscribe.model.Wall;

import wainscribe.model.length.Length;
import wainscribe.model.length.LengthUnit;

import wainscribe.model.measure.Measure;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model <b>Package</b>.
 * <!-- end-user-doc -->
 * @generated
 */
public class WainscribePackageImpl extends EPackageImpl implements WainscribePackage {
	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass elementEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass homeEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass roomEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass wallEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass cornerEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass diagonalEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass placedEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass openingEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass fixtureEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass boxEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass existingTrimEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass serviceEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass placedFrameEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass referenceLineEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass axisEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass guideEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass surfaceZoneEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass finishEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass paintEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass profileReferenceEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass briefEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass priceEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass storedOffcutEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass cutBarEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass cutPieceEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum roomUseEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum fanOutletEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum fanModeEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum openingKindEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum swingEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum glazingEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum boxTypeEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum fixtureTypeEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum heatSourceEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum supportEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum fixingEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum trimTypeEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum serviceKindEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum surfaceEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum glossLevelEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum binderEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum substrateEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum soundnessEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum primerEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum materialEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum insideJointEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum casingJointEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum sawScaleEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum profileUseEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum priceUnitEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType lengthEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType lengthUnitEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType measureEDataType = null;

	/**
	 * Creates an instance of the model <b>Package</b>, registered with
	 * {@link org.eclipse.emf.ecore.EPackage.Registry EPackage.Registry} by the package
	 * package URI value.
	 * <p>Note: the correct way to create the package is via the static
	 * factory method {@link #init init()}, which also performs
	 * initialization of the package, or returns the registered package,
	 * if one already exists.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.eclipse.emf.ecore.EPackage.Registry
	 * @see wainscribe.model.WainscribePackage#eNS_URI
	 * @see #init()
	 * @generated
	 */
	private WainscribePackageImpl() {
		super(eNS_URI, WainscribeFactory.eINSTANCE);
	}
	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static boolean isInited = false;

	/**
	 * Creates, registers, and initializes the <b>Package</b> for this model, and for any others upon which it depends.
	 *
	 * <p>This method is used to initialize {@link WainscribePackage#eINSTANCE} when that field is accessed.
	 * Clients should not invoke it directly. Instead, they should simply access that field to obtain the package.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #eNS_URI
	 * @see #createPackageContents()
	 * @see #initializePackageContents()
	 * @generated
	 */
	public static WainscribePackage init() {
		if (isInited) return (WainscribePackage)EPackage.Registry.INSTANCE.getEPackage(WainscribePackage.eNS_URI);

		// Obtain or create and register package
		Object registeredWainscribePackage = EPackage.Registry.INSTANCE.get(eNS_URI);
		WainscribePackageImpl theWainscribePackage = registeredWainscribePackage instanceof WainscribePackageImpl ? (WainscribePackageImpl)registeredWainscribePackage : new WainscribePackageImpl();

		isInited = true;

		// Create package meta-data objects
		theWainscribePackage.createPackageContents();

		// Initialize created meta-data
		theWainscribePackage.initializePackageContents();

		// Mark meta-data to indicate it can't be changed
		theWainscribePackage.freeze();

		// Update the registry and return the package
		EPackage.Registry.INSTANCE.put(WainscribePackage.eNS_URI, theWainscribePackage);
		return theWainscribePackage;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getElement() {
		return elementEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getElement_Id() {
		return (EAttribute)elementEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getElement_Name() {
		return (EAttribute)elementEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getElement_Notes() {
		return (EAttribute)elementEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getHome() {
		return homeEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getHome_FormatVersion() {
		return (EAttribute)homeEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getHome_Units() {
		return (EAttribute)homeEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getHome_Country() {
		return (EAttribute)homeEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getHome_Built() {
		return (EAttribute)homeEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getHome_Currency() {
		return (EAttribute)homeEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getHome_Tax() {
		return (EAttribute)homeEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getHome_RoomOrder() {
		return (EAttribute)homeEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getHome_Brief() {
		return (EReference)homeEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getHome_Paints() {
		return (EReference)homeEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getHome_Prices() {
		return (EReference)homeEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getHome_Kerf() {
		return (EAttribute)homeEClass.getEStructuralFeatures().get(10);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getHome_EndTrim() {
		return (EAttribute)homeEClass.getEStructuralFeatures().get(11);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getHome_ShortestOffcut() {
		return (EAttribute)homeEClass.getEStructuralFeatures().get(12);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getHome_Offcuts() {
		return (EReference)homeEClass.getEStructuralFeatures().get(13);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getHome_CutBars() {
		return (EReference)homeEClass.getEStructuralFeatures().get(14);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getRoom() {
		return roomEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRoom_FormatVersion() {
		return (EAttribute)roomEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRoom_Use() {
		return (EAttribute)roomEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRoom_Height() {
		return (EAttribute)roomEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRoom_Air() {
		return (EAttribute)roomEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRoom_Humidity() {
		return (EAttribute)roomEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRoom_SurfaceTemperature() {
		return (EAttribute)roomEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRoom_Fan() {
		return (EAttribute)roomEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRoom_FanOutlet() {
		return (EAttribute)roomEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRoom_FanMode() {
		return (EAttribute)roomEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRoom_Open() {
		return (EAttribute)roomEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getRoom_Walls() {
		return (EReference)roomEClass.getEStructuralFeatures().get(10);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getRoom_Diagonals() {
		return (EReference)roomEClass.getEStructuralFeatures().get(11);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getRoom_Finishes() {
		return (EReference)roomEClass.getEStructuralFeatures().get(12);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getRoom_Brief() {
		return (EReference)roomEClass.getEStructuralFeatures().get(13);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getRoom_Paints() {
		return (EReference)roomEClass.getEStructuralFeatures().get(14);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getRoom_Guides() {
		return (EReference)roomEClass.getEStructuralFeatures().get(15);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getWall() {
		return wallEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getWall_Room() {
		return (EReference)wallEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getWall_Length() {
		return (EAttribute)wallEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getWall_Height() {
		return (EAttribute)wallEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getWall_HeightRight() {
		return (EAttribute)wallEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getWall_FloorRight() {
		return (EAttribute)wallEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getWall_Angle() {
		return (EAttribute)wallEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getWall_Bow() {
		return (EAttribute)wallEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getWall_Plumbing() {
		return (EAttribute)wallEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getWall_Rated() {
		return (EAttribute)wallEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getWall_Wallboard() {
		return (EAttribute)wallEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getWall_StudSpacing() {
		return (EAttribute)wallEClass.getEStructuralFeatures().get(10);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getWall_StudSpacingUnknown() {
		return (EAttribute)wallEClass.getEStructuralFeatures().get(11);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getWall_Corner() {
		return (EReference)wallEClass.getEStructuralFeatures().get(12);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getWall_Openings() {
		return (EReference)wallEClass.getEStructuralFeatures().get(13);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getWall_Fixtures() {
		return (EReference)wallEClass.getEStructuralFeatures().get(14);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getWall_Boxes() {
		return (EReference)wallEClass.getEStructuralFeatures().get(15);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getWall_Trims() {
		return (EReference)wallEClass.getEStructuralFeatures().get(16);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getWall_Services() {
		return (EReference)wallEClass.getEStructuralFeatures().get(17);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getWall_PlacedFrames() {
		return (EReference)wallEClass.getEStructuralFeatures().get(18);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getWall_Axes() {
		return (EReference)wallEClass.getEStructuralFeatures().get(19);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getWall_Guides() {
		return (EReference)wallEClass.getEStructuralFeatures().get(20);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getCorner() {
		return cornerEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCorner_LegThis() {
		return (EAttribute)cornerEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCorner_LegNext() {
		return (EAttribute)cornerEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCorner_Diagonal() {
		return (EAttribute)cornerEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getDiagonal() {
		return diagonalEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getDiagonal_From() {
		return (EReference)diagonalEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getDiagonal_To() {
		return (EReference)diagonalEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getDiagonal_Distance() {
		return (EAttribute)diagonalEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getPlaced() {
		return placedEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPlaced_X() {
		return (EAttribute)placedEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPlaced_Y() {
		return (EAttribute)placedEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPlaced_Width() {
		return (EAttribute)placedEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPlaced_Height() {
		return (EAttribute)placedEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPlaced_Depth() {
		return (EAttribute)placedEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getOpening() {
		return openingEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getOpening_Kind() {
		return (EAttribute)openingEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getOpening_Casing() {
		return (EAttribute)openingEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getOpening_CasingDepth() {
		return (EAttribute)openingEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getOpening_Reveal() {
		return (EAttribute)openingEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getOpening_Stool() {
		return (EAttribute)openingEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getOpening_Apron() {
		return (EAttribute)openingEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getOpening_Swing() {
		return (EAttribute)openingEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getOpening_Egress() {
		return (EAttribute)openingEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getOpening_Glazing() {
		return (EAttribute)openingEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getFixture() {
		return fixtureEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFixture_Type() {
		return (EAttribute)fixtureEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFixture_Heat() {
		return (EAttribute)fixtureEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFixture_TankGap() {
		return (EAttribute)fixtureEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFixture_TankTop() {
		return (EAttribute)fixtureEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFixture_WetEdge() {
		return (EAttribute)fixtureEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFixture_Behind() {
		return (EAttribute)fixtureEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFixture_Support() {
		return (EAttribute)fixtureEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFixture_Fixing() {
		return (EAttribute)fixtureEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFixture_Mass() {
		return (EAttribute)fixtureEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFixture_Load() {
		return (EAttribute)fixtureEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFixture_Gap() {
		return (EAttribute)fixtureEClass.getEStructuralFeatures().get(10);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFixture_OpeningX() {
		return (EAttribute)fixtureEClass.getEStructuralFeatures().get(11);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFixture_OpeningWidth() {
		return (EAttribute)fixtureEClass.getEStructuralFeatures().get(12);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFixture_OpeningHeight() {
		return (EAttribute)fixtureEClass.getEStructuralFeatures().get(13);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFixture_Planned() {
		return (EAttribute)fixtureEClass.getEStructuralFeatures().get(14);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFixture_Framed() {
		return (EAttribute)fixtureEClass.getEStructuralFeatures().get(15);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getBox() {
		return boxEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getBox_Type() {
		return (EAttribute)boxEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getBox_Gang() {
		return (EAttribute)boxEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getBox_Gfci() {
		return (EAttribute)boxEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getBox_Shaver() {
		return (EAttribute)boxEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getExistingTrim() {
		return existingTrimEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getExistingTrim_Type() {
		return (EAttribute)existingTrimEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getExistingTrim_Keep() {
		return (EAttribute)existingTrimEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getExistingTrim_Raked() {
		return (EAttribute)existingTrimEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getService() {
		return serviceEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getService_Kind() {
		return (EAttribute)serviceEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getPlacedFrame() {
		return placedFrameEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getReferenceLine() {
		return referenceLineEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getReferenceLine_At() {
		return (EAttribute)referenceLineEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getAxis() {
		return axisEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getGuide() {
		return guideEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getSurfaceZone() {
		return surfaceZoneEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSurfaceZone_Surface() {
		return (EAttribute)surfaceZoneEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSurfaceZone_Walls() {
		return (EAttribute)surfaceZoneEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getFinish() {
		return finishEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getFinish_Zone() {
		return (EReference)finishEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFinish_Gloss() {
		return (EAttribute)finishEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFinish_Binder() {
		return (EAttribute)finishEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFinish_Substrate() {
		return (EAttribute)finishEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFinish_Sound() {
		return (EAttribute)finishEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFinish_Texture() {
		return (EAttribute)finishEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFinish_Disturb() {
		return (EAttribute)finishEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getPaint() {
		return paintEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getPaint_Zone() {
		return (EReference)paintEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPaint_Colour() {
		return (EAttribute)paintEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPaint_Gloss() {
		return (EAttribute)paintEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPaint_Binder() {
		return (EAttribute)paintEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPaint_Scrub() {
		return (EAttribute)paintEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPaint_Mildew() {
		return (EAttribute)paintEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPaint_Coats() {
		return (EAttribute)paintEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPaint_Clean() {
		return (EAttribute)paintEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPaint_Degloss() {
		return (EAttribute)paintEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPaint_Primer() {
		return (EAttribute)paintEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getProfileReference() {
		return profileReferenceEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getProfileReference_Use() {
		return (EAttribute)profileReferenceEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getProfileReference_Profile() {
		return (EAttribute)profileReferenceEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getBrief() {
		return briefEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getBrief_Pattern() {
		return (EAttribute)briefEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getBrief_Rail() {
		return (EAttribute)briefEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getBrief_RailFace() {
		return (EAttribute)briefEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getBrief_RailThickness() {
		return (EAttribute)briefEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getBrief_Gap() {
		return (EAttribute)briefEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getBrief_GapY() {
		return (EAttribute)briefEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getBrief_Face() {
		return (EAttribute)briefEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getBrief_Thickness() {
		return (EAttribute)briefEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getBrief_FrameWidthMin() {
		return (EAttribute)briefEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getBrief_FrameWidthMax() {
		return (EAttribute)briefEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getBrief_Base() {
		return (EAttribute)briefEClass.getEStructuralFeatures().get(10);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getBrief_Crown() {
		return (EAttribute)briefEClass.getEStructuralFeatures().get(11);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getBrief_Material() {
		return (EAttribute)briefEClass.getEStructuralFeatures().get(12);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getBrief_Stock() {
		return (EAttribute)briefEClass.getEStructuralFeatures().get(13);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getBrief_Nail() {
		return (EAttribute)briefEClass.getEStructuralFeatures().get(14);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getBrief_Board() {
		return (EAttribute)briefEClass.getEStructuralFeatures().get(15);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getBrief_BoardWalls() {
		return (EAttribute)briefEClass.getEStructuralFeatures().get(16);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getBrief_Profiles() {
		return (EReference)briefEClass.getEStructuralFeatures().get(17);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getBrief_Inside() {
		return (EAttribute)briefEClass.getEStructuralFeatures().get(18);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getBrief_BaseAtCasing() {
		return (EAttribute)briefEClass.getEStructuralFeatures().get(19);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getBrief_Saw() {
		return (EAttribute)briefEClass.getEStructuralFeatures().get(20);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getBrief_GlassLap() {
		return (EAttribute)briefEClass.getEStructuralFeatures().get(21);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getBrief_GlassClearance() {
		return (EAttribute)briefEClass.getEStructuralFeatures().get(22);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getPrice() {
		return priceEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPrice_Item() {
		return (EAttribute)priceEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPrice_Unit() {
		return (EAttribute)priceEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPrice_PackLength() {
		return (EAttribute)priceEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPrice_Pack() {
		return (EAttribute)priceEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPrice_Amount() {
		return (EAttribute)priceEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getStoredOffcut() {
		return storedOffcutEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStoredOffcut_Profile() {
		return (EAttribute)storedOffcutEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStoredOffcut_Material() {
		return (EAttribute)storedOffcutEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStoredOffcut_Length() {
		return (EAttribute)storedOffcutEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStoredOffcut_Origin() {
		return (EAttribute)storedOffcutEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getCutBar() {
		return cutBarEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCutBar_Profile() {
		return (EAttribute)cutBarEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCutBar_Material() {
		return (EAttribute)cutBarEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCutBar_Length() {
		return (EAttribute)cutBarEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCutBar_Price() {
		return (EAttribute)cutBarEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getCutBar_Pieces() {
		return (EReference)cutBarEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getCutPiece() {
		return cutPieceEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCutPiece_Room() {
		return (EAttribute)cutPieceEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCutPiece_Label() {
		return (EAttribute)cutPieceEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCutPiece_Length() {
		return (EAttribute)cutPieceEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getRoomUse() {
		return roomUseEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getFanOutlet() {
		return fanOutletEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getFanMode() {
		return fanModeEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getOpeningKind() {
		return openingKindEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getSwing() {
		return swingEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getGlazing() {
		return glazingEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getBoxType() {
		return boxTypeEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getFixtureType() {
		return fixtureTypeEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getHeatSource() {
		return heatSourceEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getSupport() {
		return supportEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getFixing() {
		return fixingEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getTrimType() {
		return trimTypeEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getServiceKind() {
		return serviceKindEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getSurface() {
		return surfaceEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getGlossLevel() {
		return glossLevelEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getBinder() {
		return binderEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getSubstrate() {
		return substrateEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getSoundness() {
		return soundnessEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getPrimer() {
		return primerEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getMaterial() {
		return materialEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getInsideJoint() {
		return insideJointEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getCasingJoint() {
		return casingJointEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getSawScale() {
		return sawScaleEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getProfileUse() {
		return profileUseEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getPriceUnit() {
		return priceUnitEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getLength() {
		return lengthEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getLengthUnit() {
		return lengthUnitEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getMeasure() {
		return measureEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public WainscribeFactory getWainscribeFactory() {
		return (WainscribeFactory)getEFactoryInstance();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private boolean isCreated = false;

	/**
	 * Creates the meta-model objects for the package.  This method is
	 * guarded to have no affect on any invocation but its first.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public void createPackageContents() {
		if (isCreated) return;
		isCreated = true;

		// Create classes and their features
		elementEClass = createEClass(ELEMENT);
		createEAttribute(elementEClass, ELEMENT__ID);
		createEAttribute(elementEClass, ELEMENT__NAME);
		createEAttribute(elementEClass, ELEMENT__NOTES);

		homeEClass = createEClass(HOME);
		createEAttribute(homeEClass, HOME__FORMAT_VERSION);
		createEAttribute(homeEClass, HOME__UNITS);
		createEAttribute(homeEClass, HOME__COUNTRY);
		createEAttribute(homeEClass, HOME__BUILT);
		createEAttribute(homeEClass, HOME__CURRENCY);
		createEAttribute(homeEClass, HOME__TAX);
		createEAttribute(homeEClass, HOME__ROOM_ORDER);
		createEReference(homeEClass, HOME__BRIEF);
		createEReference(homeEClass, HOME__PAINTS);
		createEReference(homeEClass, HOME__PRICES);
		createEAttribute(homeEClass, HOME__KERF);
		createEAttribute(homeEClass, HOME__END_TRIM);
		createEAttribute(homeEClass, HOME__SHORTEST_OFFCUT);
		createEReference(homeEClass, HOME__OFFCUTS);
		createEReference(homeEClass, HOME__CUT_BARS);

		roomEClass = createEClass(ROOM);
		createEAttribute(roomEClass, ROOM__FORMAT_VERSION);
		createEAttribute(roomEClass, ROOM__USE);
		createEAttribute(roomEClass, ROOM__HEIGHT);
		createEAttribute(roomEClass, ROOM__AIR);
		createEAttribute(roomEClass, ROOM__HUMIDITY);
		createEAttribute(roomEClass, ROOM__SURFACE_TEMPERATURE);
		createEAttribute(roomEClass, ROOM__FAN);
		createEAttribute(roomEClass, ROOM__FAN_OUTLET);
		createEAttribute(roomEClass, ROOM__FAN_MODE);
		createEAttribute(roomEClass, ROOM__OPEN);
		createEReference(roomEClass, ROOM__WALLS);
		createEReference(roomEClass, ROOM__DIAGONALS);
		createEReference(roomEClass, ROOM__FINISHES);
		createEReference(roomEClass, ROOM__BRIEF);
		createEReference(roomEClass, ROOM__PAINTS);
		createEReference(roomEClass, ROOM__GUIDES);

		wallEClass = createEClass(WALL);
		createEReference(wallEClass, WALL__ROOM);
		createEAttribute(wallEClass, WALL__LENGTH);
		createEAttribute(wallEClass, WALL__HEIGHT);
		createEAttribute(wallEClass, WALL__HEIGHT_RIGHT);
		createEAttribute(wallEClass, WALL__FLOOR_RIGHT);
		createEAttribute(wallEClass, WALL__ANGLE);
		createEAttribute(wallEClass, WALL__BOW);
		createEAttribute(wallEClass, WALL__PLUMBING);
		createEAttribute(wallEClass, WALL__RATED);
		createEAttribute(wallEClass, WALL__WALLBOARD);
		createEAttribute(wallEClass, WALL__STUD_SPACING);
		createEAttribute(wallEClass, WALL__STUD_SPACING_UNKNOWN);
		createEReference(wallEClass, WALL__CORNER);
		createEReference(wallEClass, WALL__OPENINGS);
		createEReference(wallEClass, WALL__FIXTURES);
		createEReference(wallEClass, WALL__BOXES);
		createEReference(wallEClass, WALL__TRIMS);
		createEReference(wallEClass, WALL__SERVICES);
		createEReference(wallEClass, WALL__PLACED_FRAMES);
		createEReference(wallEClass, WALL__AXES);
		createEReference(wallEClass, WALL__GUIDES);

		cornerEClass = createEClass(CORNER);
		createEAttribute(cornerEClass, CORNER__LEG_THIS);
		createEAttribute(cornerEClass, CORNER__LEG_NEXT);
		createEAttribute(cornerEClass, CORNER__DIAGONAL);

		diagonalEClass = createEClass(DIAGONAL);
		createEReference(diagonalEClass, DIAGONAL__FROM);
		createEReference(diagonalEClass, DIAGONAL__TO);
		createEAttribute(diagonalEClass, DIAGONAL__DISTANCE);

		placedEClass = createEClass(PLACED);
		createEAttribute(placedEClass, PLACED__X);
		createEAttribute(placedEClass, PLACED__Y);
		createEAttribute(placedEClass, PLACED__WIDTH);
		createEAttribute(placedEClass, PLACED__HEIGHT);
		createEAttribute(placedEClass, PLACED__DEPTH);

		openingEClass = createEClass(OPENING);
		createEAttribute(openingEClass, OPENING__KIND);
		createEAttribute(openingEClass, OPENING__CASING);
		createEAttribute(openingEClass, OPENING__CASING_DEPTH);
		createEAttribute(openingEClass, OPENING__REVEAL);
		createEAttribute(openingEClass, OPENING__STOOL);
		createEAttribute(openingEClass, OPENING__APRON);
		createEAttribute(openingEClass, OPENING__SWING);
		createEAttribute(openingEClass, OPENING__EGRESS);
		createEAttribute(openingEClass, OPENING__GLAZING);

		fixtureEClass = createEClass(FIXTURE);
		createEAttribute(fixtureEClass, FIXTURE__TYPE);
		createEAttribute(fixtureEClass, FIXTURE__HEAT);
		createEAttribute(fixtureEClass, FIXTURE__TANK_GAP);
		createEAttribute(fixtureEClass, FIXTURE__TANK_TOP);
		createEAttribute(fixtureEClass, FIXTURE__WET_EDGE);
		createEAttribute(fixtureEClass, FIXTURE__BEHIND);
		createEAttribute(fixtureEClass, FIXTURE__SUPPORT);
		createEAttribute(fixtureEClass, FIXTURE__FIXING);
		createEAttribute(fixtureEClass, FIXTURE__MASS);
		createEAttribute(fixtureEClass, FIXTURE__LOAD);
		createEAttribute(fixtureEClass, FIXTURE__GAP);
		createEAttribute(fixtureEClass, FIXTURE__OPENING_X);
		createEAttribute(fixtureEClass, FIXTURE__OPENING_WIDTH);
		createEAttribute(fixtureEClass, FIXTURE__OPENING_HEIGHT);
		createEAttribute(fixtureEClass, FIXTURE__PLANNED);
		createEAttribute(fixtureEClass, FIXTURE__FRAMED);

		boxEClass = createEClass(BOX);
		createEAttribute(boxEClass, BOX__TYPE);
		createEAttribute(boxEClass, BOX__GANG);
		createEAttribute(boxEClass, BOX__GFCI);
		createEAttribute(boxEClass, BOX__SHAVER);

		existingTrimEClass = createEClass(EXISTING_TRIM);
		createEAttribute(existingTrimEClass, EXISTING_TRIM__TYPE);
		createEAttribute(existingTrimEClass, EXISTING_TRIM__KEEP);
		createEAttribute(existingTrimEClass, EXISTING_TRIM__RAKED);

		serviceEClass = createEClass(SERVICE);
		createEAttribute(serviceEClass, SERVICE__KIND);

		placedFrameEClass = createEClass(PLACED_FRAME);

		referenceLineEClass = createEClass(REFERENCE_LINE);
		createEAttribute(referenceLineEClass, REFERENCE_LINE__AT);

		axisEClass = createEClass(AXIS);

		guideEClass = createEClass(GUIDE);

		surfaceZoneEClass = createEClass(SURFACE_ZONE);
		createEAttribute(surfaceZoneEClass, SURFACE_ZONE__SURFACE);
		createEAttribute(surfaceZoneEClass, SURFACE_ZONE__WALLS);

		finishEClass = createEClass(FINISH);
		createEReference(finishEClass, FINISH__ZONE);
		createEAttribute(finishEClass, FINISH__GLOSS);
		createEAttribute(finishEClass, FINISH__BINDER);
		createEAttribute(finishEClass, FINISH__SUBSTRATE);
		createEAttribute(finishEClass, FINISH__SOUND);
		createEAttribute(finishEClass, FINISH__TEXTURE);
		createEAttribute(finishEClass, FINISH__DISTURB);

		paintEClass = createEClass(PAINT);
		createEReference(paintEClass, PAINT__ZONE);
		createEAttribute(paintEClass, PAINT__COLOUR);
		createEAttribute(paintEClass, PAINT__GLOSS);
		createEAttribute(paintEClass, PAINT__BINDER);
		createEAttribute(paintEClass, PAINT__SCRUB);
		createEAttribute(paintEClass, PAINT__MILDEW);
		createEAttribute(paintEClass, PAINT__COATS);
		createEAttribute(paintEClass, PAINT__CLEAN);
		createEAttribute(paintEClass, PAINT__DEGLOSS);
		createEAttribute(paintEClass, PAINT__PRIMER);

		profileReferenceEClass = createEClass(PROFILE_REFERENCE);
		createEAttribute(profileReferenceEClass, PROFILE_REFERENCE__USE);
		createEAttribute(profileReferenceEClass, PROFILE_REFERENCE__PROFILE);

		briefEClass = createEClass(BRIEF);
		createEAttribute(briefEClass, BRIEF__PATTERN);
		createEAttribute(briefEClass, BRIEF__RAIL);
		createEAttribute(briefEClass, BRIEF__RAIL_FACE);
		createEAttribute(briefEClass, BRIEF__RAIL_THICKNESS);
		createEAttribute(briefEClass, BRIEF__GAP);
		createEAttribute(briefEClass, BRIEF__GAP_Y);
		createEAttribute(briefEClass, BRIEF__FACE);
		createEAttribute(briefEClass, BRIEF__THICKNESS);
		createEAttribute(briefEClass, BRIEF__FRAME_WIDTH_MIN);
		createEAttribute(briefEClass, BRIEF__FRAME_WIDTH_MAX);
		createEAttribute(briefEClass, BRIEF__BASE);
		createEAttribute(briefEClass, BRIEF__CROWN);
		createEAttribute(briefEClass, BRIEF__MATERIAL);
		createEAttribute(briefEClass, BRIEF__STOCK);
		createEAttribute(briefEClass, BRIEF__NAIL);
		createEAttribute(briefEClass, BRIEF__BOARD);
		createEAttribute(briefEClass, BRIEF__BOARD_WALLS);
		createEReference(briefEClass, BRIEF__PROFILES);
		createEAttribute(briefEClass, BRIEF__INSIDE);
		createEAttribute(briefEClass, BRIEF__BASE_AT_CASING);
		createEAttribute(briefEClass, BRIEF__SAW);
		createEAttribute(briefEClass, BRIEF__GLASS_LAP);
		createEAttribute(briefEClass, BRIEF__GLASS_CLEARANCE);

		priceEClass = createEClass(PRICE);
		createEAttribute(priceEClass, PRICE__ITEM);
		createEAttribute(priceEClass, PRICE__UNIT);
		createEAttribute(priceEClass, PRICE__PACK_LENGTH);
		createEAttribute(priceEClass, PRICE__PACK);
		createEAttribute(priceEClass, PRICE__AMOUNT);

		storedOffcutEClass = createEClass(STORED_OFFCUT);
		createEAttribute(storedOffcutEClass, STORED_OFFCUT__PROFILE);
		createEAttribute(storedOffcutEClass, STORED_OFFCUT__MATERIAL);
		createEAttribute(storedOffcutEClass, STORED_OFFCUT__LENGTH);
		createEAttribute(storedOffcutEClass, STORED_OFFCUT__ORIGIN);

		cutBarEClass = createEClass(CUT_BAR);
		createEAttribute(cutBarEClass, CUT_BAR__PROFILE);
		createEAttribute(cutBarEClass, CUT_BAR__MATERIAL);
		createEAttribute(cutBarEClass, CUT_BAR__LENGTH);
		createEAttribute(cutBarEClass, CUT_BAR__PRICE);
		createEReference(cutBarEClass, CUT_BAR__PIECES);

		cutPieceEClass = createEClass(CUT_PIECE);
		createEAttribute(cutPieceEClass, CUT_PIECE__ROOM);
		createEAttribute(cutPieceEClass, CUT_PIECE__LABEL);
		createEAttribute(cutPieceEClass, CUT_PIECE__LENGTH);

		// Create enums
		roomUseEEnum = createEEnum(ROOM_USE);
		fanOutletEEnum = createEEnum(FAN_OUTLET);
		fanModeEEnum = createEEnum(FAN_MODE);
		openingKindEEnum = createEEnum(OPENING_KIND);
		swingEEnum = createEEnum(SWING);
		glazingEEnum = createEEnum(GLAZING);
		boxTypeEEnum = createEEnum(BOX_TYPE);
		fixtureTypeEEnum = createEEnum(FIXTURE_TYPE);
		heatSourceEEnum = createEEnum(HEAT_SOURCE);
		supportEEnum = createEEnum(SUPPORT);
		fixingEEnum = createEEnum(FIXING);
		trimTypeEEnum = createEEnum(TRIM_TYPE);
		serviceKindEEnum = createEEnum(SERVICE_KIND);
		surfaceEEnum = createEEnum(SURFACE);
		glossLevelEEnum = createEEnum(GLOSS_LEVEL);
		binderEEnum = createEEnum(BINDER);
		substrateEEnum = createEEnum(SUBSTRATE);
		soundnessEEnum = createEEnum(SOUNDNESS);
		primerEEnum = createEEnum(PRIMER);
		materialEEnum = createEEnum(MATERIAL);
		insideJointEEnum = createEEnum(INSIDE_JOINT);
		casingJointEEnum = createEEnum(CASING_JOINT);
		sawScaleEEnum = createEEnum(SAW_SCALE);
		profileUseEEnum = createEEnum(PROFILE_USE);
		priceUnitEEnum = createEEnum(PRICE_UNIT);

		// Create data types
		lengthEDataType = createEDataType(LENGTH);
		lengthUnitEDataType = createEDataType(LENGTH_UNIT);
		measureEDataType = createEDataType(MEASURE);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private boolean isInitialized = false;

	/**
	 * Complete the initialization of the package and its meta-model.  This
	 * method is guarded to have no affect on any invocation but its first.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public void initializePackageContents() {
		if (isInitialized) return;
		isInitialized = true;

		// Initialize package
		setName(eNAME);
		setNsPrefix(eNS_PREFIX);
		setNsURI(eNS_URI);

		// Create type parameters

		// Set bounds for type parameters

		// Add supertypes to classes
		homeEClass.getESuperTypes().add(this.getElement());
		roomEClass.getESuperTypes().add(this.getElement());
		wallEClass.getESuperTypes().add(this.getElement());
		cornerEClass.getESuperTypes().add(this.getElement());
		diagonalEClass.getESuperTypes().add(this.getElement());
		placedEClass.getESuperTypes().add(this.getElement());
		openingEClass.getESuperTypes().add(this.getPlaced());
		fixtureEClass.getESuperTypes().add(this.getPlaced());
		boxEClass.getESuperTypes().add(this.getPlaced());
		existingTrimEClass.getESuperTypes().add(this.getPlaced());
		serviceEClass.getESuperTypes().add(this.getPlaced());
		placedFrameEClass.getESuperTypes().add(this.getPlaced());
		referenceLineEClass.getESuperTypes().add(this.getElement());
		axisEClass.getESuperTypes().add(this.getReferenceLine());
		guideEClass.getESuperTypes().add(this.getReferenceLine());
		finishEClass.getESuperTypes().add(this.getElement());
		paintEClass.getESuperTypes().add(this.getElement());
		briefEClass.getESuperTypes().add(this.getElement());
		priceEClass.getESuperTypes().add(this.getElement());
		storedOffcutEClass.getESuperTypes().add(this.getElement());
		cutBarEClass.getESuperTypes().add(this.getElement());

		// Initialize classes, features, and operations; add parameters
		initEClass(elementEClass, Element.class, "Element", IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getElement_Id(), ecorePackage.getEString(), "id", null, 0, 1, Element.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getElement_Name(), ecorePackage.getEString(), "name", null, 0, 1, Element.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getElement_Notes(), ecorePackage.getEString(), "notes", null, 0, -1, Element.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, !IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(homeEClass, Home.class, "Home", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getHome_FormatVersion(), ecorePackage.getEInt(), "formatVersion", "1", 0, 1, Home.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getHome_Units(), this.getLengthUnit(), "units", "mm", 0, 1, Home.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getHome_Country(), ecorePackage.getEString(), "country", null, 0, 1, Home.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getHome_Built(), ecorePackage.getEIntegerObject(), "built", null, 0, 1, Home.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getHome_Currency(), ecorePackage.getEString(), "currency", null, 0, 1, Home.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getHome_Tax(), this.getMeasure(), "tax", null, 0, 1, Home.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getHome_RoomOrder(), ecorePackage.getEString(), "roomOrder", null, 0, -1, Home.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getHome_Brief(), this.getBrief(), null, "brief", null, 0, 1, Home.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getHome_Paints(), this.getPaint(), null, "paints", null, 0, -1, Home.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getHome_Prices(), this.getPrice(), null, "prices", null, 0, -1, Home.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getHome_Kerf(), this.getLength(), "kerf", null, 0, 1, Home.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getHome_EndTrim(), this.getLength(), "endTrim", null, 0, 1, Home.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getHome_ShortestOffcut(), this.getLength(), "shortestOffcut", null, 0, 1, Home.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getHome_Offcuts(), this.getStoredOffcut(), null, "offcuts", null, 0, -1, Home.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getHome_CutBars(), this.getCutBar(), null, "cutBars", null, 0, -1, Home.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(roomEClass, Room.class, "Room", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getRoom_FormatVersion(), ecorePackage.getEInt(), "formatVersion", "1", 0, 1, Room.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRoom_Use(), this.getRoomUse(), "use", null, 0, 1, Room.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRoom_Height(), this.getLength(), "height", null, 0, 1, Room.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRoom_Air(), this.getMeasure(), "air", null, 0, 1, Room.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRoom_Humidity(), this.getMeasure(), "humidity", null, 0, 1, Room.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRoom_SurfaceTemperature(), this.getMeasure(), "surfaceTemperature", null, 0, 1, Room.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRoom_Fan(), this.getMeasure(), "fan", null, 0, 1, Room.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRoom_FanOutlet(), this.getFanOutlet(), "fanOutlet", null, 0, 1, Room.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRoom_FanMode(), this.getFanMode(), "fanMode", null, 0, 1, Room.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRoom_Open(), ecorePackage.getEBooleanObject(), "open", null, 0, 1, Room.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getRoom_Walls(), this.getWall(), this.getWall_Room(), "walls", null, 0, -1, Room.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getRoom_Diagonals(), this.getDiagonal(), null, "diagonals", null, 0, -1, Room.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getRoom_Finishes(), this.getFinish(), null, "finishes", null, 0, -1, Room.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getRoom_Brief(), this.getBrief(), null, "brief", null, 0, 1, Room.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getRoom_Paints(), this.getPaint(), null, "paints", null, 0, -1, Room.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getRoom_Guides(), this.getGuide(), null, "guides", null, 0, -1, Room.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(wallEClass, Wall.class, "Wall", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getWall_Room(), this.getRoom(), this.getRoom_Walls(), "room", null, 0, 1, Wall.class, IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWall_Length(), this.getLength(), "length", null, 0, 1, Wall.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWall_Height(), this.getLength(), "height", null, 0, 1, Wall.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWall_HeightRight(), this.getLength(), "heightRight", null, 0, 1, Wall.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWall_FloorRight(), this.getLength(), "floorRight", null, 0, 1, Wall.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWall_Angle(), ecorePackage.getEBigDecimal(), "angle", null, 0, 1, Wall.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWall_Bow(), this.getLength(), "bow", null, 0, 1, Wall.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWall_Plumbing(), ecorePackage.getEBooleanObject(), "plumbing", null, 0, 1, Wall.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWall_Rated(), ecorePackage.getEBooleanObject(), "rated", null, 0, 1, Wall.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWall_Wallboard(), this.getLength(), "wallboard", null, 0, 1, Wall.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWall_StudSpacing(), this.getLength(), "studSpacing", null, 0, 1, Wall.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWall_StudSpacingUnknown(), ecorePackage.getEBooleanObject(), "studSpacingUnknown", null, 0, 1, Wall.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getWall_Corner(), this.getCorner(), null, "corner", null, 0, 1, Wall.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getWall_Openings(), this.getOpening(), null, "openings", null, 0, -1, Wall.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getWall_Fixtures(), this.getFixture(), null, "fixtures", null, 0, -1, Wall.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getWall_Boxes(), this.getBox(), null, "boxes", null, 0, -1, Wall.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getWall_Trims(), this.getExistingTrim(), null, "trims", null, 0, -1, Wall.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getWall_Services(), this.getService(), null, "services", null, 0, -1, Wall.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getWall_PlacedFrames(), this.getPlacedFrame(), null, "placedFrames", null, 0, -1, Wall.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getWall_Axes(), this.getAxis(), null, "axes", null, 0, -1, Wall.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getWall_Guides(), this.getGuide(), null, "guides", null, 0, -1, Wall.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(cornerEClass, Corner.class, "Corner", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getCorner_LegThis(), this.getLength(), "legThis", null, 0, 1, Corner.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCorner_LegNext(), this.getLength(), "legNext", null, 0, 1, Corner.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCorner_Diagonal(), this.getLength(), "diagonal", null, 0, 1, Corner.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(diagonalEClass, Diagonal.class, "Diagonal", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getDiagonal_From(), this.getWall(), null, "from", null, 0, 1, Diagonal.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getDiagonal_To(), this.getWall(), null, "to", null, 0, 1, Diagonal.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getDiagonal_Distance(), this.getLength(), "distance", null, 0, 1, Diagonal.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(placedEClass, Placed.class, "Placed", IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getPlaced_X(), this.getLength(), "x", null, 0, 1, Placed.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPlaced_Y(), this.getLength(), "y", null, 0, 1, Placed.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPlaced_Width(), this.getLength(), "width", null, 0, 1, Placed.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPlaced_Height(), this.getLength(), "height", null, 0, 1, Placed.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPlaced_Depth(), this.getLength(), "depth", null, 0, 1, Placed.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(openingEClass, Opening.class, "Opening", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getOpening_Kind(), this.getOpeningKind(), "kind", null, 0, 1, Opening.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getOpening_Casing(), this.getLength(), "casing", null, 0, 1, Opening.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getOpening_CasingDepth(), this.getLength(), "casingDepth", null, 0, 1, Opening.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getOpening_Reveal(), this.getLength(), "reveal", null, 0, 1, Opening.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getOpening_Stool(), this.getLength(), "stool", null, 0, 1, Opening.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getOpening_Apron(), this.getLength(), "apron", null, 0, 1, Opening.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getOpening_Swing(), this.getSwing(), "swing", null, 0, 1, Opening.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getOpening_Egress(), ecorePackage.getEBooleanObject(), "egress", null, 0, 1, Opening.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getOpening_Glazing(), this.getGlazing(), "glazing", null, 0, 1, Opening.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(fixtureEClass, Fixture.class, "Fixture", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getFixture_Type(), this.getFixtureType(), "type", null, 0, 1, Fixture.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFixture_Heat(), this.getHeatSource(), "heat", null, 0, 1, Fixture.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFixture_TankGap(), this.getLength(), "tankGap", null, 0, 1, Fixture.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFixture_TankTop(), this.getLength(), "tankTop", null, 0, 1, Fixture.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFixture_WetEdge(), this.getLength(), "wetEdge", null, 0, 1, Fixture.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFixture_Behind(), ecorePackage.getEBooleanObject(), "behind", null, 0, 1, Fixture.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFixture_Support(), this.getSupport(), "support", null, 0, 1, Fixture.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFixture_Fixing(), this.getFixing(), "fixing", null, 0, 1, Fixture.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFixture_Mass(), this.getMeasure(), "mass", null, 0, 1, Fixture.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFixture_Load(), this.getMeasure(), "load", null, 0, 1, Fixture.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFixture_Gap(), this.getLength(), "gap", null, 0, 1, Fixture.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFixture_OpeningX(), this.getLength(), "openingX", null, 0, 1, Fixture.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFixture_OpeningWidth(), this.getLength(), "openingWidth", null, 0, 1, Fixture.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFixture_OpeningHeight(), this.getLength(), "openingHeight", null, 0, 1, Fixture.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFixture_Planned(), ecorePackage.getEBooleanObject(), "planned", null, 0, 1, Fixture.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFixture_Framed(), ecorePackage.getEBooleanObject(), "framed", null, 0, 1, Fixture.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(boxEClass, Box.class, "Box", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getBox_Type(), this.getBoxType(), "type", null, 0, 1, Box.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getBox_Gang(), ecorePackage.getEIntegerObject(), "gang", null, 0, 1, Box.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getBox_Gfci(), ecorePackage.getEBooleanObject(), "gfci", null, 0, 1, Box.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getBox_Shaver(), ecorePackage.getEBooleanObject(), "shaver", null, 0, 1, Box.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(existingTrimEClass, ExistingTrim.class, "ExistingTrim", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getExistingTrim_Type(), this.getTrimType(), "type", null, 0, 1, ExistingTrim.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getExistingTrim_Keep(), ecorePackage.getEBooleanObject(), "keep", null, 0, 1, ExistingTrim.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getExistingTrim_Raked(), ecorePackage.getEBooleanObject(), "raked", null, 0, 1, ExistingTrim.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(serviceEClass, Service.class, "Service", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getService_Kind(), this.getServiceKind(), "kind", null, 0, 1, Service.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(placedFrameEClass, PlacedFrame.class, "PlacedFrame", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);

		initEClass(referenceLineEClass, ReferenceLine.class, "ReferenceLine", IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getReferenceLine_At(), this.getLength(), "at", null, 0, 1, ReferenceLine.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(axisEClass, Axis.class, "Axis", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);

		initEClass(guideEClass, Guide.class, "Guide", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);

		initEClass(surfaceZoneEClass, SurfaceZone.class, "SurfaceZone", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getSurfaceZone_Surface(), this.getSurface(), "surface", null, 0, 1, SurfaceZone.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSurfaceZone_Walls(), ecorePackage.getEString(), "walls", null, 0, -1, SurfaceZone.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(finishEClass, Finish.class, "Finish", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getFinish_Zone(), this.getSurfaceZone(), null, "zone", null, 0, 1, Finish.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFinish_Gloss(), this.getGlossLevel(), "gloss", null, 0, 1, Finish.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFinish_Binder(), this.getBinder(), "binder", null, 0, 1, Finish.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFinish_Substrate(), this.getSubstrate(), "substrate", null, 0, 1, Finish.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFinish_Sound(), this.getSoundness(), "sound", null, 0, 1, Finish.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFinish_Texture(), ecorePackage.getEBooleanObject(), "texture", null, 0, 1, Finish.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFinish_Disturb(), ecorePackage.getEBooleanObject(), "disturb", null, 0, 1, Finish.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(paintEClass, Paint.class, "Paint", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getPaint_Zone(), this.getSurfaceZone(), null, "zone", null, 0, 1, Paint.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPaint_Colour(), ecorePackage.getEString(), "colour", null, 0, 1, Paint.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPaint_Gloss(), this.getGlossLevel(), "gloss", null, 0, 1, Paint.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPaint_Binder(), this.getBinder(), "binder", null, 0, 1, Paint.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPaint_Scrub(), ecorePackage.getEIntegerObject(), "scrub", null, 0, 1, Paint.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPaint_Mildew(), ecorePackage.getEBooleanObject(), "mildew", null, 0, 1, Paint.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPaint_Coats(), ecorePackage.getEIntegerObject(), "coats", null, 0, 1, Paint.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPaint_Clean(), ecorePackage.getEBooleanObject(), "clean", null, 0, 1, Paint.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPaint_Degloss(), ecorePackage.getEBooleanObject(), "degloss", null, 0, 1, Paint.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPaint_Primer(), this.getPrimer(), "primer", null, 0, 1, Paint.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(profileReferenceEClass, ProfileReference.class, "ProfileReference", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getProfileReference_Use(), this.getProfileUse(), "use", null, 0, 1, ProfileReference.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getProfileReference_Profile(), ecorePackage.getEString(), "profile", null, 0, 1, ProfileReference.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(briefEClass, Brief.class, "Brief", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getBrief_Pattern(), ecorePackage.getEString(), "pattern", null, 0, 1, Brief.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getBrief_Rail(), this.getLength(), "rail", null, 0, 1, Brief.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getBrief_RailFace(), this.getLength(), "railFace", null, 0, 1, Brief.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getBrief_RailThickness(), this.getLength(), "railThickness", null, 0, 1, Brief.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getBrief_Gap(), this.getLength(), "gap", null, 0, 1, Brief.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getBrief_GapY(), this.getLength(), "gapY", null, 0, 1, Brief.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getBrief_Face(), this.getLength(), "face", null, 0, 1, Brief.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getBrief_Thickness(), this.getLength(), "thickness", null, 0, 1, Brief.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getBrief_FrameWidthMin(), this.getLength(), "frameWidthMin", null, 0, 1, Brief.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getBrief_FrameWidthMax(), this.getLength(), "frameWidthMax", null, 0, 1, Brief.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getBrief_Base(), this.getLength(), "base", null, 0, 1, Brief.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getBrief_Crown(), this.getLength(), "crown", null, 0, 1, Brief.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getBrief_Material(), this.getMaterial(), "material", null, 0, 1, Brief.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getBrief_Stock(), this.getLength(), "stock", null, 0, -1, Brief.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getBrief_Nail(), this.getLength(), "nail", null, 0, 1, Brief.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getBrief_Board(), this.getLength(), "board", null, 0, 1, Brief.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getBrief_BoardWalls(), ecorePackage.getEString(), "boardWalls", null, 0, -1, Brief.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getBrief_Profiles(), this.getProfileReference(), null, "profiles", null, 0, -1, Brief.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getBrief_Inside(), this.getInsideJoint(), "inside", null, 0, 1, Brief.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getBrief_BaseAtCasing(), this.getCasingJoint(), "baseAtCasing", null, 0, 1, Brief.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getBrief_Saw(), this.getSawScale(), "saw", null, 0, 1, Brief.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getBrief_GlassLap(), this.getLength(), "glassLap", null, 0, 1, Brief.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getBrief_GlassClearance(), this.getLength(), "glassClearance", null, 0, 1, Brief.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(priceEClass, Price.class, "Price", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getPrice_Item(), ecorePackage.getEString(), "item", null, 0, 1, Price.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPrice_Unit(), this.getPriceUnit(), "unit", null, 0, 1, Price.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPrice_PackLength(), this.getLength(), "packLength", null, 0, 1, Price.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPrice_Pack(), ecorePackage.getEBigDecimal(), "pack", null, 0, 1, Price.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPrice_Amount(), ecorePackage.getEBigDecimal(), "amount", null, 0, 1, Price.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(storedOffcutEClass, StoredOffcut.class, "StoredOffcut", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getStoredOffcut_Profile(), ecorePackage.getEString(), "profile", null, 0, 1, StoredOffcut.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStoredOffcut_Material(), this.getMaterial(), "material", null, 0, 1, StoredOffcut.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStoredOffcut_Length(), this.getLength(), "length", null, 0, 1, StoredOffcut.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStoredOffcut_Origin(), ecorePackage.getEString(), "origin", null, 0, 1, StoredOffcut.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(cutBarEClass, CutBar.class, "CutBar", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getCutBar_Profile(), ecorePackage.getEString(), "profile", null, 0, 1, CutBar.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCutBar_Material(), this.getMaterial(), "material", null, 0, 1, CutBar.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCutBar_Length(), this.getLength(), "length", null, 0, 1, CutBar.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCutBar_Price(), ecorePackage.getEBigDecimal(), "price", null, 0, 1, CutBar.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getCutBar_Pieces(), this.getCutPiece(), null, "pieces", null, 0, -1, CutBar.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(cutPieceEClass, CutPiece.class, "CutPiece", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getCutPiece_Room(), ecorePackage.getEString(), "room", null, 0, 1, CutPiece.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCutPiece_Label(), ecorePackage.getEString(), "label", null, 0, 1, CutPiece.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCutPiece_Length(), this.getLength(), "length", null, 0, 1, CutPiece.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		// Initialize enums and add enum literals
		initEEnum(roomUseEEnum, RoomUse.class, "RoomUse");
		addEEnumLiteral(roomUseEEnum, RoomUse.UNRECORDED);
		addEEnumLiteral(roomUseEEnum, RoomUse.POWDER_ROOM);
		addEEnumLiteral(roomUseEEnum, RoomUse.BATH_WITH_SHOWER);
		addEEnumLiteral(roomUseEEnum, RoomUse.BATH_WITH_TUB);
		addEEnumLiteral(roomUseEEnum, RoomUse.KITCHEN);
		addEEnumLiteral(roomUseEEnum, RoomUse.BEDROOM);
		addEEnumLiteral(roomUseEEnum, RoomUse.LIVING);
		addEEnumLiteral(roomUseEEnum, RoomUse.DINING);
		addEEnumLiteral(roomUseEEnum, RoomUse.HALL);
		addEEnumLiteral(roomUseEEnum, RoomUse.STAIR);
		addEEnumLiteral(roomUseEEnum, RoomUse.LAUNDRY);
		addEEnumLiteral(roomUseEEnum, RoomUse.UTILITY);

		initEEnum(fanOutletEEnum, FanOutlet.class, "FanOutlet");
		addEEnumLiteral(fanOutletEEnum, FanOutlet.UNRECORDED);
		addEEnumLiteral(fanOutletEEnum, FanOutlet.OUTDOORS);
		addEEnumLiteral(fanOutletEEnum, FanOutlet.ATTIC);
		addEEnumLiteral(fanOutletEEnum, FanOutlet.NONE);

		initEEnum(fanModeEEnum, FanMode.class, "FanMode");
		addEEnumLiteral(fanModeEEnum, FanMode.UNRECORDED);
		addEEnumLiteral(fanModeEEnum, FanMode.DEMAND);
		addEEnumLiteral(fanModeEEnum, FanMode.CONTINUOUS);

		initEEnum(openingKindEEnum, OpeningKind.class, "OpeningKind");
		addEEnumLiteral(openingKindEEnum, OpeningKind.DOOR);
		addEEnumLiteral(openingKindEEnum, OpeningKind.WINDOW);

		initEEnum(swingEEnum, Swing.class, "Swing");
		addEEnumLiteral(swingEEnum, Swing.UNRECORDED);
		addEEnumLiteral(swingEEnum, Swing.IN_LEFT);
		addEEnumLiteral(swingEEnum, Swing.IN_RIGHT);
		addEEnumLiteral(swingEEnum, Swing.OUT_LEFT);
		addEEnumLiteral(swingEEnum, Swing.OUT_RIGHT);
		addEEnumLiteral(swingEEnum, Swing.BYPASS);
		addEEnumLiteral(swingEEnum, Swing.NONE);

		initEEnum(glazingEEnum, Glazing.class, "Glazing");
		addEEnumLiteral(glazingEEnum, Glazing.UNRECORDED);
		addEEnumLiteral(glazingEEnum, Glazing.ANNEALED);
		addEEnumLiteral(glazingEEnum, Glazing.TEMPERED);
		addEEnumLiteral(glazingEEnum, Glazing.TOUGHENED);
		addEEnumLiteral(glazingEEnum, Glazing.LAMINATED);

		initEEnum(boxTypeEEnum, BoxType.class, "BoxType");
		addEEnumLiteral(boxTypeEEnum, BoxType.UNRECORDED);
		addEEnumLiteral(boxTypeEEnum, BoxType.RECEPTACLE);
		addEEnumLiteral(boxTypeEEnum, BoxType.SWITCH);
		addEEnumLiteral(boxTypeEEnum, BoxType.DATA);
		addEEnumLiteral(boxTypeEEnum, BoxType.PANEL);
		addEEnumLiteral(boxTypeEEnum, BoxType.JUNCTION);

		initEEnum(fixtureTypeEEnum, FixtureType.class, "FixtureType");
		addEEnumLiteral(fixtureTypeEEnum, FixtureType.TOILET);
		addEEnumLiteral(fixtureTypeEEnum, FixtureType.BIDET);
		addEEnumLiteral(fixtureTypeEEnum, FixtureType.VANITY);
		addEEnumLiteral(fixtureTypeEEnum, FixtureType.BASIN);
		addEEnumLiteral(fixtureTypeEEnum, FixtureType.SINK);
		addEEnumLiteral(fixtureTypeEEnum, FixtureType.TUB);
		addEEnumLiteral(fixtureTypeEEnum, FixtureType.SHOWER);
		addEEnumLiteral(fixtureTypeEEnum, FixtureType.TOWEL_BAR);
		addEEnumLiteral(fixtureTypeEEnum, FixtureType.TOWEL_RING);
		addEEnumLiteral(fixtureTypeEEnum, FixtureType.ROBE_HOOK);
		addEEnumLiteral(fixtureTypeEEnum, FixtureType.TP_HOLDER);
		addEEnumLiteral(fixtureTypeEEnum, FixtureType.GRAB_BAR);
		addEEnumLiteral(fixtureTypeEEnum, FixtureType.SCONCE);
		addEEnumLiteral(fixtureTypeEEnum, FixtureType.HEATER);
		addEEnumLiteral(fixtureTypeEEnum, FixtureType.RADIATOR);
		addEEnumLiteral(fixtureTypeEEnum, FixtureType.REGISTER);
		addEEnumLiteral(fixtureTypeEEnum, FixtureType.GRILLE);
		addEEnumLiteral(fixtureTypeEEnum, FixtureType.MIRROR);
		addEEnumLiteral(fixtureTypeEEnum, FixtureType.CABINET);
		addEEnumLiteral(fixtureTypeEEnum, FixtureType.SHELF);
		addEEnumLiteral(fixtureTypeEEnum, FixtureType.ART);
		addEEnumLiteral(fixtureTypeEEnum, FixtureType.RANGE);
		addEEnumLiteral(fixtureTypeEEnum, FixtureType.COOKTOP);
		addEEnumLiteral(fixtureTypeEEnum, FixtureType.HOOD);
		addEEnumLiteral(fixtureTypeEEnum, FixtureType.APPLIANCE);
		addEEnumLiteral(fixtureTypeEEnum, FixtureType.WASHER);
		addEEnumLiteral(fixtureTypeEEnum, FixtureType.FIREPLACE);
		addEEnumLiteral(fixtureTypeEEnum, FixtureType.THERMOSTAT);
		addEEnumLiteral(fixtureTypeEEnum, FixtureType.KEYPAD);
		addEEnumLiteral(fixtureTypeEEnum, FixtureType.HANDRAIL);

		initEEnum(heatSourceEEnum, HeatSource.class, "HeatSource");
		addEEnumLiteral(heatSourceEEnum, HeatSource.UNRECORDED);
		addEEnumLiteral(heatSourceEEnum, HeatSource.ELECTRIC);
		addEEnumLiteral(heatSourceEEnum, HeatSource.GAS);
		addEEnumLiteral(heatSourceEEnum, HeatSource.HYDRONIC);

		initEEnum(supportEEnum, Support.class, "Support");
		addEEnumLiteral(supportEEnum, Support.UNRECORDED);
		addEEnumLiteral(supportEEnum, Support.CLIPS);
		addEEnumLiteral(supportEEnum, Support.CHANNEL);
		addEEnumLiteral(supportEEnum, Support.NONE);

		initEEnum(fixingEEnum, Fixing.class, "Fixing");
		addEEnumLiteral(fixingEEnum, Fixing.UNRECORDED);
		addEEnumLiteral(fixingEEnum, Fixing.STUDS);
		addEEnumLiteral(fixingEEnum, Fixing.ANCHORS);
		addEEnumLiteral(fixingEEnum, Fixing.CLIPS);
		addEEnumLiteral(fixingEEnum, Fixing.ADHESIVE);

		initEEnum(trimTypeEEnum, TrimType.class, "TrimType");
		addEEnumLiteral(trimTypeEEnum, TrimType.BASE);
		addEEnumLiteral(trimTypeEEnum, TrimType.CHAIR_RAIL);
		addEEnumLiteral(trimTypeEEnum, TrimType.CROWN);
		addEEnumLiteral(trimTypeEEnum, TrimType.CASING);
		addEEnumLiteral(trimTypeEEnum, TrimType.PICTURE_RAIL);
		addEEnumLiteral(trimTypeEEnum, TrimType.HANDRAIL);

		initEEnum(serviceKindEEnum, ServiceKind.class, "ServiceKind");
		addEEnumLiteral(serviceKindEEnum, ServiceKind.STUD);
		addEEnumLiteral(serviceKindEEnum, ServiceKind.PIPE);
		addEEnumLiteral(serviceKindEEnum, ServiceKind.CABLE);

		initEEnum(surfaceEEnum, Surface.class, "Surface");
		addEEnumLiteral(surfaceEEnum, Surface.WALLS);
		addEEnumLiteral(surfaceEEnum, Surface.TRIM);
		addEEnumLiteral(surfaceEEnum, Surface.CEILING);
		addEEnumLiteral(surfaceEEnum, Surface.FLOOR);
		addEEnumLiteral(surfaceEEnum, Surface.LOWER);
		addEEnumLiteral(surfaceEEnum, Surface.UPPER);

		initEEnum(glossLevelEEnum, GlossLevel.class, "GlossLevel");
		addEEnumLiteral(glossLevelEEnum, GlossLevel.UNRECORDED);
		addEEnumLiteral(glossLevelEEnum, GlossLevel.G1);
		addEEnumLiteral(glossLevelEEnum, GlossLevel.G2);
		addEEnumLiteral(glossLevelEEnum, GlossLevel.G3);
		addEEnumLiteral(glossLevelEEnum, GlossLevel.G4);
		addEEnumLiteral(glossLevelEEnum, GlossLevel.G5);
		addEEnumLiteral(glossLevelEEnum, GlossLevel.G6);
		addEEnumLiteral(glossLevelEEnum, GlossLevel.G7);

		initEEnum(binderEEnum, Binder.class, "Binder");
		addEEnumLiteral(binderEEnum, Binder.UNRECORDED);
		addEEnumLiteral(binderEEnum, Binder.ALKYD);
		addEEnumLiteral(binderEEnum, Binder.ACRYLIC);
		addEEnumLiteral(binderEEnum, Binder.LIMEWASH);
		addEEnumLiteral(binderEEnum, Binder.UNKNOWN);

		initEEnum(substrateEEnum, Substrate.class, "Substrate");
		addEEnumLiteral(substrateEEnum, Substrate.UNRECORDED);
		addEEnumLiteral(substrateEEnum, Substrate.DRYWALL);
		addEEnumLiteral(substrateEEnum, Substrate.PLASTER);
		addEEnumLiteral(substrateEEnum, Substrate.WOOD);
		addEEnumLiteral(substrateEEnum, Substrate.MDF);
		addEEnumLiteral(substrateEEnum, Substrate.TILE);
		addEEnumLiteral(substrateEEnum, Substrate.METAL);

		initEEnum(soundnessEEnum, Soundness.class, "Soundness");
		addEEnumLiteral(soundnessEEnum, Soundness.UNRECORDED);
		addEEnumLiteral(soundnessEEnum, Soundness.YES);
		addEEnumLiteral(soundnessEEnum, Soundness.NO);
		addEEnumLiteral(soundnessEEnum, Soundness.CHALKING);

		initEEnum(primerEEnum, Primer.class, "Primer");
		addEEnumLiteral(primerEEnum, Primer.UNRECORDED);
		addEEnumLiteral(primerEEnum, Primer.BONDING);
		addEEnumLiteral(primerEEnum, Primer.NONE);

		initEEnum(materialEEnum, Material.class, "Material");
		addEEnumLiteral(materialEEnum, Material.UNRECORDED);
		addEEnumLiteral(materialEEnum, Material.MDF);
		addEEnumLiteral(materialEEnum, Material.MR_MDF);
		addEEnumLiteral(materialEEnum, Material.PINE);
		addEEnumLiteral(materialEEnum, Material.POPLAR);
		addEEnumLiteral(materialEEnum, Material.PVC);
		addEEnumLiteral(materialEEnum, Material.POLYURETHANE);
		addEEnumLiteral(materialEEnum, Material.PLASTER);
		addEEnumLiteral(materialEEnum, Material.METAL);

		initEEnum(insideJointEEnum, InsideJoint.class, "InsideJoint");
		addEEnumLiteral(insideJointEEnum, InsideJoint.UNRECORDED);
		addEEnumLiteral(insideJointEEnum, InsideJoint.COPE);
		addEEnumLiteral(insideJointEEnum, InsideJoint.MITRE);
		addEEnumLiteral(insideJointEEnum, InsideJoint.BLOCK);

		initEEnum(casingJointEEnum, CasingJoint.class, "CasingJoint");
		addEEnumLiteral(casingJointEEnum, CasingJoint.UNRECORDED);
		addEEnumLiteral(casingJointEEnum, CasingJoint.RETURN);
		addEEnumLiteral(casingJointEEnum, CasingJoint.PLINTH);

		initEEnum(sawScaleEEnum, SawScale.class, "SawScale");
		addEEnumLiteral(sawScaleEEnum, SawScale.UNRECORDED);
		addEEnumLiteral(sawScaleEEnum, SawScale.HALF);
		addEEnumLiteral(sawScaleEEnum, SawScale.TENTH);

		initEEnum(profileUseEEnum, ProfileUse.class, "ProfileUse");
		addEEnumLiteral(profileUseEEnum, ProfileUse.FRAME);
		addEEnumLiteral(profileUseEEnum, ProfileUse.RAIL);
		addEEnumLiteral(profileUseEEnum, ProfileUse.BASE);
		addEEnumLiteral(profileUseEEnum, ProfileUse.CROWN);
		addEEnumLiteral(profileUseEEnum, ProfileUse.CASING);
		addEEnumLiteral(profileUseEEnum, ProfileUse.BATTEN);
		addEEnumLiteral(profileUseEEnum, ProfileUse.CAP);
		addEEnumLiteral(profileUseEEnum, ProfileUse.SHELF_EDGE);

		initEEnum(priceUnitEEnum, PriceUnit.class, "PriceUnit");
		addEEnumLiteral(priceUnitEEnum, PriceUnit.LENGTH);
		addEEnumLiteral(priceUnitEEnum, PriceUnit.LITRE);
		addEEnumLiteral(priceUnitEEnum, PriceUnit.EACH);
		addEEnumLiteral(priceUnitEEnum, PriceUnit.METRE);

		// Initialize data types
		initEDataType(lengthEDataType, Length.class, "Length", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(lengthUnitEDataType, LengthUnit.class, "LengthUnit", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(measureEDataType, Measure.class, "Measure", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);

		// Create resource
		createResource(eNS_URI);
	}

} //WainscribePackageImpl
