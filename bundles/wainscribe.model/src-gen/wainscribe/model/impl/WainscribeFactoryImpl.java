/**
 * SPDX-License-Identifier: EPL-2.0
 */
package wainscribe.model.impl;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EDataType;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EPackage;

import org.eclipse.emf.ecore.impl.EFactoryImpl;

import org.eclipse.emf.ecore.plugin.EcorePlugin;

import wainscribe.model.*;

import wainscribe.model.length.Length;
import wainscribe.model.length.LengthUnit;

import wainscribe.model.measure.Measure;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model <b>Factory</b>.
 * <!-- end-user-doc -->
 * @generated
 */
public class WainscribeFactoryImpl extends EFactoryImpl implements WainscribeFactory {
	/**
	 * Creates the default factory implementation.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static WainscribeFactory init() {
		try {
			WainscribeFactory theWainscribeFactory = (WainscribeFactory)EPackage.Registry.INSTANCE.getEFactory(WainscribePackage.eNS_URI);
			if (theWainscribeFactory != null) {
				return theWainscribeFactory;
			}
		}
		catch (Exception exception) {
			EcorePlugin.INSTANCE.log(exception);
		}
		return new WainscribeFactoryImpl();
	}

	/**
	 * Creates an instance of the factory.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public WainscribeFactoryImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EObject create(EClass eClass) {
		switch (eClass.getClassifierID()) {
			case WainscribePackage.HOME: return createHome();
			case WainscribePackage.ROOM: return createRoom();
			case WainscribePackage.WALL: return createWall();
			case WainscribePackage.CORNER: return createCorner();
			case WainscribePackage.DIAGONAL: return createDiagonal();
			case WainscribePackage.OPENING: return createOpening();
			case WainscribePackage.FIXTURE: return createFixture();
			case WainscribePackage.BOX: return createBox();
			case WainscribePackage.EXISTING_TRIM: return createExistingTrim();
			case WainscribePackage.SERVICE: return createService();
			case WainscribePackage.PLACED_FRAME: return createPlacedFrame();
			case WainscribePackage.AXIS: return createAxis();
			case WainscribePackage.GUIDE: return createGuide();
			case WainscribePackage.SURFACE_ZONE: return createSurfaceZone();
			case WainscribePackage.FINISH: return createFinish();
			case WainscribePackage.PAINT: return createPaint();
			case WainscribePackage.PROFILE_REFERENCE: return createProfileReference();
			case WainscribePackage.BRIEF: return createBrief();
			case WainscribePackage.PRICE: return createPrice();
			case WainscribePackage.STORED_OFFCUT: return createStoredOffcut();
			case WainscribePackage.CUT_BAR: return createCutBar();
			case WainscribePackage.CUT_PIECE: return createCutPiece();
			default:
				throw new IllegalArgumentException("The class '" + eClass.getName() + "' is not a valid classifier");
		}
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object createFromString(EDataType eDataType, String initialValue) {
		switch (eDataType.getClassifierID()) {
			case WainscribePackage.ROOM_USE:
				return createRoomUseFromString(eDataType, initialValue);
			case WainscribePackage.FAN_OUTLET:
				return createFanOutletFromString(eDataType, initialValue);
			case WainscribePackage.FAN_MODE:
				return createFanModeFromString(eDataType, initialValue);
			case WainscribePackage.OPENING_KIND:
				return createOpeningKindFromString(eDataType, initialValue);
			case WainscribePackage.SWING:
				return createSwingFromString(eDataType, initialValue);
			case WainscribePackage.GLAZING:
				return createGlazingFromString(eDataType, initialValue);
			case WainscribePackage.BOX_TYPE:
				return createBoxTypeFromString(eDataType, initialValue);
			case WainscribePackage.FIXTURE_TYPE:
				return createFixtureTypeFromString(eDataType, initialValue);
			case WainscribePackage.HEAT_SOURCE:
				return createHeatSourceFromString(eDataType, initialValue);
			case WainscribePackage.SUPPORT:
				return createSupportFromString(eDataType, initialValue);
			case WainscribePackage.FIXING:
				return createFixingFromString(eDataType, initialValue);
			case WainscribePackage.TRIM_TYPE:
				return createTrimTypeFromString(eDataType, initialValue);
			case WainscribePackage.SERVICE_KIND:
				return createServiceKindFromString(eDataType, initialValue);
			case WainscribePackage.SURFACE:
				return createSurfaceFromString(eDataType, initialValue);
			case WainscribePackage.GLOSS_LEVEL:
				return createGlossLevelFromString(eDataType, initialValue);
			case WainscribePackage.BINDER:
				return createBinderFromString(eDataType, initialValue);
			case WainscribePackage.SUBSTRATE:
				return createSubstrateFromString(eDataType, initialValue);
			case WainscribePackage.SOUNDNESS:
				return createSoundnessFromString(eDataType, initialValue);
			case WainscribePackage.PRIMER:
				return createPrimerFromString(eDataType, initialValue);
			case WainscribePackage.MATERIAL:
				return createMaterialFromString(eDataType, initialValue);
			case WainscribePackage.INSIDE_JOINT:
				return createInsideJointFromString(eDataType, initialValue);
			case WainscribePackage.CASING_JOINT:
				return createCasingJointFromString(eDataType, initialValue);
			case WainscribePackage.SAW_SCALE:
				return createSawScaleFromString(eDataType, initialValue);
			case WainscribePackage.PROFILE_USE:
				return createProfileUseFromString(eDataType, initialValue);
			case WainscribePackage.PRICE_UNIT:
				return createPriceUnitFromString(eDataType, initialValue);
			case WainscribePackage.LENGTH:
				return createLengthFromString(eDataType, initialValue);
			case WainscribePackage.LENGTH_UNIT:
				return createLengthUnitFromString(eDataType, initialValue);
			case WainscribePackage.MEASURE:
				return createMeasureFromString(eDataType, initialValue);
			default:
				throw new IllegalArgumentException("The datatype '" + eDataType.getName() + "' is not a valid classifier");
		}
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String convertToString(EDataType eDataType, Object instanceValue) {
		switch (eDataType.getClassifierID()) {
			case WainscribePackage.ROOM_USE:
				return convertRoomUseToString(eDataType, instanceValue);
			case WainscribePackage.FAN_OUTLET:
				return convertFanOutletToString(eDataType, instanceValue);
			case WainscribePackage.FAN_MODE:
				return convertFanModeToString(eDataType, instanceValue);
			case WainscribePackage.OPENING_KIND:
				return convertOpeningKindToString(eDataType, instanceValue);
			case WainscribePackage.SWING:
				return convertSwingToString(eDataType, instanceValue);
			case WainscribePackage.GLAZING:
				return convertGlazingToString(eDataType, instanceValue);
			case WainscribePackage.BOX_TYPE:
				return convertBoxTypeToString(eDataType, instanceValue);
			case WainscribePackage.FIXTURE_TYPE:
				return convertFixtureTypeToString(eDataType, instanceValue);
			case WainscribePackage.HEAT_SOURCE:
				return convertHeatSourceToString(eDataType, instanceValue);
			case WainscribePackage.SUPPORT:
				return convertSupportToString(eDataType, instanceValue);
			case WainscribePackage.FIXING:
				return convertFixingToString(eDataType, instanceValue);
			case WainscribePackage.TRIM_TYPE:
				return convertTrimTypeToString(eDataType, instanceValue);
			case WainscribePackage.SERVICE_KIND:
				return convertServiceKindToString(eDataType, instanceValue);
			case WainscribePackage.SURFACE:
				return convertSurfaceToString(eDataType, instanceValue);
			case WainscribePackage.GLOSS_LEVEL:
				return convertGlossLevelToString(eDataType, instanceValue);
			case WainscribePackage.BINDER:
				return convertBinderToString(eDataType, instanceValue);
			case WainscribePackage.SUBSTRATE:
				return convertSubstrateToString(eDataType, instanceValue);
			case WainscribePackage.SOUNDNESS:
				return convertSoundnessToString(eDataType, instanceValue);
			case WainscribePackage.PRIMER:
				return convertPrimerToString(eDataType, instanceValue);
			case WainscribePackage.MATERIAL:
				return convertMaterialToString(eDataType, instanceValue);
			case WainscribePackage.INSIDE_JOINT:
				return convertInsideJointToString(eDataType, instanceValue);
			case WainscribePackage.CASING_JOINT:
				return convertCasingJointToString(eDataType, instanceValue);
			case WainscribePackage.SAW_SCALE:
				return convertSawScaleToString(eDataType, instanceValue);
			case WainscribePackage.PROFILE_USE:
				return convertProfileUseToString(eDataType, instanceValue);
			case WainscribePackage.PRICE_UNIT:
				return convertPriceUnitToString(eDataType, instanceValue);
			case WainscribePackage.LENGTH:
				return convertLengthToString(eDataType, instanceValue);
			case WainscribePackage.LENGTH_UNIT:
				return convertLengthUnitToString(eDataType, instanceValue);
			case WainscribePackage.MEASURE:
				return convertMeasureToString(eDataType, instanceValue);
			default:
				throw new IllegalArgumentException("The datatype '" + eDataType.getName() + "' is not a valid classifier");
		}
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Home createHome() {
		HomeImpl home = new HomeImpl();
		return home;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Room createRoom() {
		RoomImpl room = new RoomImpl();
		return room;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Wall createWall() {
		WallImpl wall = new WallImpl();
		return wall;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Corner createCorner() {
		CornerImpl corner = new CornerImpl();
		return corner;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Diagonal createDiagonal() {
		DiagonalImpl diagonal = new DiagonalImpl();
		return diagonal;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Opening createOpening() {
		OpeningImpl opening = new OpeningImpl();
		return opening;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Fixture createFixture() {
		FixtureImpl fixture = new FixtureImpl();
		return fixture;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Box createBox() {
		BoxImpl box = new BoxImpl();
		return box;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public ExistingTrim createExistingTrim() {
		ExistingTrimImpl existingTrim = new ExistingTrimImpl();
		return existingTrim;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Service createService() {
		ServiceImpl service = new ServiceImpl();
		return service;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public PlacedFrame createPlacedFrame() {
		PlacedFrameImpl placedFrame = new PlacedFrameImpl();
		return placedFrame;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Axis createAxis() {
		AxisImpl axis = new AxisImpl();
		return axis;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Guide createGuide() {
		GuideImpl guide = new GuideImpl();
		return guide;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public SurfaceZone createSurfaceZone() {
		SurfaceZoneImpl surfaceZone = new SurfaceZoneImpl();
		return surfaceZone;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Finish createFinish() {
		FinishImpl finish = new FinishImpl();
		return finish;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Paint createPaint() {
		PaintImpl paint = new PaintImpl();
		return paint;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public ProfileReference createProfileReference() {
		ProfileReferenceImpl profileReference = new ProfileReferenceImpl();
		return profileReference;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Brief createBrief() {
		BriefImpl brief = new BriefImpl();
		return brief;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Price createPrice() {
		PriceImpl price = new PriceImpl();
		return price;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public StoredOffcut createStoredOffcut() {
		StoredOffcutImpl storedOffcut = new StoredOffcutImpl();
		return storedOffcut;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public CutBar createCutBar() {
		CutBarImpl cutBar = new CutBarImpl();
		return cutBar;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public CutPiece createCutPiece() {
		CutPieceImpl cutPiece = new CutPieceImpl();
		return cutPiece;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public RoomUse createRoomUseFromString(EDataType eDataType, String initialValue) {
		RoomUse result = RoomUse.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertRoomUseToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public FanOutlet createFanOutletFromString(EDataType eDataType, String initialValue) {
		FanOutlet result = FanOutlet.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertFanOutletToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public FanMode createFanModeFromString(EDataType eDataType, String initialValue) {
		FanMode result = FanMode.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertFanModeToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public OpeningKind createOpeningKindFromString(EDataType eDataType, String initialValue) {
		OpeningKind result = OpeningKind.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertOpeningKindToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Swing createSwingFromString(EDataType eDataType, String initialValue) {
		Swing result = Swing.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertSwingToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Glazing createGlazingFromString(EDataType eDataType, String initialValue) {
		Glazing result = Glazing.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertGlazingToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public BoxType createBoxTypeFromString(EDataType eDataType, String initialValue) {
		BoxType result = BoxType.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertBoxTypeToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public FixtureType createFixtureTypeFromString(EDataType eDataType, String initialValue) {
		FixtureType result = FixtureType.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertFixtureTypeToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public HeatSource createHeatSourceFromString(EDataType eDataType, String initialValue) {
		HeatSource result = HeatSource.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertHeatSourceToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Support createSupportFromString(EDataType eDataType, String initialValue) {
		Support result = Support.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertSupportToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Fixing createFixingFromString(EDataType eDataType, String initialValue) {
		Fixing result = Fixing.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertFixingToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public TrimType createTrimTypeFromString(EDataType eDataType, String initialValue) {
		TrimType result = TrimType.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertTrimTypeToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public ServiceKind createServiceKindFromString(EDataType eDataType, String initialValue) {
		ServiceKind result = ServiceKind.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertServiceKindToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Surface createSurfaceFromString(EDataType eDataType, String initialValue) {
		Surface result = Surface.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertSurfaceToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public GlossLevel createGlossLevelFromString(EDataType eDataType, String initialValue) {
		GlossLevel result = GlossLevel.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertGlossLevelToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Binder createBinderFromString(EDataType eDataType, String initialValue) {
		Binder result = Binder.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertBinderToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Substrate createSubstrateFromString(EDataType eDataType, String initialValue) {
		Substrate result = Substrate.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertSubstrateToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Soundness createSoundnessFromString(EDataType eDataType, String initialValue) {
		Soundness result = Soundness.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertSoundnessToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Primer createPrimerFromString(EDataType eDataType, String initialValue) {
		Primer result = Primer.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertPrimerToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Material createMaterialFromString(EDataType eDataType, String initialValue) {
		Material result = Material.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertMaterialToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public InsideJoint createInsideJointFromString(EDataType eDataType, String initialValue) {
		InsideJoint result = InsideJoint.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertInsideJointToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public CasingJoint createCasingJointFromString(EDataType eDataType, String initialValue) {
		CasingJoint result = CasingJoint.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertCasingJointToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public SawScale createSawScaleFromString(EDataType eDataType, String initialValue) {
		SawScale result = SawScale.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertSawScaleToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public ProfileUse createProfileUseFromString(EDataType eDataType, String initialValue) {
		ProfileUse result = ProfileUse.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertProfileUseToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public PriceUnit createPriceUnitFromString(EDataType eDataType, String initialValue) {
		PriceUnit result = PriceUnit.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertPriceUnitToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Length createLength(final String it) {
		return it == null ? null : new wainscribe.model.length.LengthParser(wainscribe.model.length.LengthUnit.MILLIMETRE).parse(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Length createLengthFromString(EDataType eDataType, String initialValue) {
		return createLength(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertLength(final Length it) {
		return it == null ? null : wainscribe.model.length.LengthFormat.asStored(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertLengthToString(EDataType eDataType, Object instanceValue) {
		return convertLength((Length)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public LengthUnit createLengthUnit(final String it) {
		return it == null ? null : wainscribe.model.length.LengthUnit.ofSymbol(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public LengthUnit createLengthUnitFromString(EDataType eDataType, String initialValue) {
		return createLengthUnit(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertLengthUnit(final LengthUnit it) {
		return it == null ? null : it.symbol();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertLengthUnitToString(EDataType eDataType, Object instanceValue) {
		return convertLengthUnit((LengthUnit)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Measure createMeasure(final String it) {
		return it == null ? null : wainscribe.model.measure.Measure.parse(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Measure createMeasureFromString(EDataType eDataType, String initialValue) {
		return createMeasure(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertMeasure(final Measure it) {
		return it == null ? null : it.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertMeasureToString(EDataType eDataType, Object instanceValue) {
		return convertMeasure((Measure)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public WainscribePackage getWainscribePackage() {
		return (WainscribePackage)getEPackage();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @deprecated
	 * @generated
	 */
	@Deprecated
	public static WainscribePackage getPackage() {
		return WainscribePackage.eINSTANCE;
	}

} //WainscribeFactoryImpl
