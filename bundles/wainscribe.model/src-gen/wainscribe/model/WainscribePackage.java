/**
 * SPDX-License-Identifier: EPL-2.0
 */
package wainscribe.model;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EDataType;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EPackage;
import org.eclipse.emf.ecore.EReference;

/**
 * <!-- begin-user-doc -->
 * The <b>Package</b> for the model.
 * It contains accessors for the meta objects to represent
 * <ul>
 *   <li>each class,</li>
 *   <li>each feature of each class,</li>
 *   <li>each operation of each class,</li>
 *   <li>each enum,</li>
 *   <li>and each data type</li>
 * </ul>
 * <!-- end-user-doc -->
 * <!-- begin-model-doc -->
 * Rooms of a home as measured, and what was decided for them. Lengths are exact; what can be computed is not stored. Unset (null) means not measured or not decided.
 * <!-- end-model-doc -->
 * @see wainscribe.model.WainscribeFactory
 * @model kind="package"
 * @generated
 */
public interface WainscribePackage extends EPackage {
	/**
	 * The package name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	String eNAME = "model";

	/**
	 * The package namespace URI.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	String eNS_URI = "urn:wainscribe:model:1";

	/**
	 * The package namespace name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	String eNS_PREFIX = "wainscribe";

	/**
	 * The singleton instance of the package.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	WainscribePackage eINSTANCE = wainscribe.model.impl.WainscribePackageImpl.init();

	/**
	 * The meta object id for the '{@link wainscribe.model.impl.ElementImpl <em>Element</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see wainscribe.model.impl.ElementImpl
	 * @see wainscribe.model.impl.WainscribePackageImpl#getElement()
	 * @generated
	 */
	int ELEMENT = 0;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ELEMENT__ID = 0;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ELEMENT__NAME = 1;

	/**
	 * The feature id for the '<em><b>Notes</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ELEMENT__NOTES = 2;

	/**
	 * The number of structural features of the '<em>Element</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ELEMENT_FEATURE_COUNT = 3;

	/**
	 * The number of operations of the '<em>Element</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ELEMENT_OPERATION_COUNT = 0;

	/**
	 * The meta object id for the '{@link wainscribe.model.impl.HomeImpl <em>Home</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see wainscribe.model.impl.HomeImpl
	 * @see wainscribe.model.impl.WainscribePackageImpl#getHome()
	 * @generated
	 */
	int HOME = 1;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int HOME__ID = ELEMENT__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int HOME__NAME = ELEMENT__NAME;

	/**
	 * The feature id for the '<em><b>Notes</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int HOME__NOTES = ELEMENT__NOTES;

	/**
	 * The feature id for the '<em><b>Format Version</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int HOME__FORMAT_VERSION = ELEMENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Units</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int HOME__UNITS = ELEMENT_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Country</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int HOME__COUNTRY = ELEMENT_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Built</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int HOME__BUILT = ELEMENT_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Currency</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int HOME__CURRENCY = ELEMENT_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Tax</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int HOME__TAX = ELEMENT_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Room Order</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int HOME__ROOM_ORDER = ELEMENT_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Brief</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int HOME__BRIEF = ELEMENT_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Paints</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int HOME__PAINTS = ELEMENT_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>Prices</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int HOME__PRICES = ELEMENT_FEATURE_COUNT + 9;

	/**
	 * The feature id for the '<em><b>Kerf</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int HOME__KERF = ELEMENT_FEATURE_COUNT + 10;

	/**
	 * The feature id for the '<em><b>End Trim</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int HOME__END_TRIM = ELEMENT_FEATURE_COUNT + 11;

	/**
	 * The feature id for the '<em><b>Shortest Offcut</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int HOME__SHORTEST_OFFCUT = ELEMENT_FEATURE_COUNT + 12;

	/**
	 * The feature id for the '<em><b>Offcuts</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int HOME__OFFCUTS = ELEMENT_FEATURE_COUNT + 13;

	/**
	 * The feature id for the '<em><b>Cut Bars</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int HOME__CUT_BARS = ELEMENT_FEATURE_COUNT + 14;

	/**
	 * The number of structural features of the '<em>Home</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int HOME_FEATURE_COUNT = ELEMENT_FEATURE_COUNT + 15;

	/**
	 * The number of operations of the '<em>Home</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int HOME_OPERATION_COUNT = ELEMENT_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link wainscribe.model.impl.RoomImpl <em>Room</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see wainscribe.model.impl.RoomImpl
	 * @see wainscribe.model.impl.WainscribePackageImpl#getRoom()
	 * @generated
	 */
	int ROOM = 2;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ROOM__ID = ELEMENT__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ROOM__NAME = ELEMENT__NAME;

	/**
	 * The feature id for the '<em><b>Notes</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ROOM__NOTES = ELEMENT__NOTES;

	/**
	 * The feature id for the '<em><b>Format Version</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ROOM__FORMAT_VERSION = ELEMENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Use</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ROOM__USE = ELEMENT_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ROOM__HEIGHT = ELEMENT_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Air</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ROOM__AIR = ELEMENT_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Humidity</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ROOM__HUMIDITY = ELEMENT_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Surface Temperature</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ROOM__SURFACE_TEMPERATURE = ELEMENT_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Fan</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ROOM__FAN = ELEMENT_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Fan Outlet</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ROOM__FAN_OUTLET = ELEMENT_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Fan Mode</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ROOM__FAN_MODE = ELEMENT_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>Open</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ROOM__OPEN = ELEMENT_FEATURE_COUNT + 9;

	/**
	 * The feature id for the '<em><b>Walls</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ROOM__WALLS = ELEMENT_FEATURE_COUNT + 10;

	/**
	 * The feature id for the '<em><b>Diagonals</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ROOM__DIAGONALS = ELEMENT_FEATURE_COUNT + 11;

	/**
	 * The feature id for the '<em><b>Finishes</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ROOM__FINISHES = ELEMENT_FEATURE_COUNT + 12;

	/**
	 * The feature id for the '<em><b>Brief</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ROOM__BRIEF = ELEMENT_FEATURE_COUNT + 13;

	/**
	 * The feature id for the '<em><b>Paints</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ROOM__PAINTS = ELEMENT_FEATURE_COUNT + 14;

	/**
	 * The feature id for the '<em><b>Guides</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ROOM__GUIDES = ELEMENT_FEATURE_COUNT + 15;

	/**
	 * The number of structural features of the '<em>Room</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ROOM_FEATURE_COUNT = ELEMENT_FEATURE_COUNT + 16;

	/**
	 * The number of operations of the '<em>Room</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ROOM_OPERATION_COUNT = ELEMENT_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link wainscribe.model.impl.WallImpl <em>Wall</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see wainscribe.model.impl.WallImpl
	 * @see wainscribe.model.impl.WainscribePackageImpl#getWall()
	 * @generated
	 */
	int WALL = 3;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WALL__ID = ELEMENT__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WALL__NAME = ELEMENT__NAME;

	/**
	 * The feature id for the '<em><b>Notes</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WALL__NOTES = ELEMENT__NOTES;

	/**
	 * The feature id for the '<em><b>Room</b></em>' container reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WALL__ROOM = ELEMENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Length</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WALL__LENGTH = ELEMENT_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WALL__HEIGHT = ELEMENT_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Height Right</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WALL__HEIGHT_RIGHT = ELEMENT_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Floor Right</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WALL__FLOOR_RIGHT = ELEMENT_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Angle</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WALL__ANGLE = ELEMENT_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Bow</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WALL__BOW = ELEMENT_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Plumbing</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WALL__PLUMBING = ELEMENT_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Rated</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WALL__RATED = ELEMENT_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>Wallboard</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WALL__WALLBOARD = ELEMENT_FEATURE_COUNT + 9;

	/**
	 * The feature id for the '<em><b>Stud Spacing</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WALL__STUD_SPACING = ELEMENT_FEATURE_COUNT + 10;

	/**
	 * The feature id for the '<em><b>Stud Spacing Unknown</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WALL__STUD_SPACING_UNKNOWN = ELEMENT_FEATURE_COUNT + 11;

	/**
	 * The feature id for the '<em><b>Corner</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WALL__CORNER = ELEMENT_FEATURE_COUNT + 12;

	/**
	 * The feature id for the '<em><b>Openings</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WALL__OPENINGS = ELEMENT_FEATURE_COUNT + 13;

	/**
	 * The feature id for the '<em><b>Fixtures</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WALL__FIXTURES = ELEMENT_FEATURE_COUNT + 14;

	/**
	 * The feature id for the '<em><b>Boxes</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WALL__BOXES = ELEMENT_FEATURE_COUNT + 15;

	/**
	 * The feature id for the '<em><b>Trims</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WALL__TRIMS = ELEMENT_FEATURE_COUNT + 16;

	/**
	 * The feature id for the '<em><b>Services</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WALL__SERVICES = ELEMENT_FEATURE_COUNT + 17;

	/**
	 * The feature id for the '<em><b>Placed Frames</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WALL__PLACED_FRAMES = ELEMENT_FEATURE_COUNT + 18;

	/**
	 * The feature id for the '<em><b>Axes</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WALL__AXES = ELEMENT_FEATURE_COUNT + 19;

	/**
	 * The feature id for the '<em><b>Guides</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WALL__GUIDES = ELEMENT_FEATURE_COUNT + 20;

	/**
	 * The number of structural features of the '<em>Wall</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WALL_FEATURE_COUNT = ELEMENT_FEATURE_COUNT + 21;

	/**
	 * The number of operations of the '<em>Wall</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WALL_OPERATION_COUNT = ELEMENT_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link wainscribe.model.impl.CornerImpl <em>Corner</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see wainscribe.model.impl.CornerImpl
	 * @see wainscribe.model.impl.WainscribePackageImpl#getCorner()
	 * @generated
	 */
	int CORNER = 4;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CORNER__ID = ELEMENT__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CORNER__NAME = ELEMENT__NAME;

	/**
	 * The feature id for the '<em><b>Notes</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CORNER__NOTES = ELEMENT__NOTES;

	/**
	 * The feature id for the '<em><b>Leg This</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CORNER__LEG_THIS = ELEMENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Leg Next</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CORNER__LEG_NEXT = ELEMENT_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Diagonal</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CORNER__DIAGONAL = ELEMENT_FEATURE_COUNT + 2;

	/**
	 * The number of structural features of the '<em>Corner</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CORNER_FEATURE_COUNT = ELEMENT_FEATURE_COUNT + 3;

	/**
	 * The number of operations of the '<em>Corner</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CORNER_OPERATION_COUNT = ELEMENT_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link wainscribe.model.impl.DiagonalImpl <em>Diagonal</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see wainscribe.model.impl.DiagonalImpl
	 * @see wainscribe.model.impl.WainscribePackageImpl#getDiagonal()
	 * @generated
	 */
	int DIAGONAL = 5;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DIAGONAL__ID = ELEMENT__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DIAGONAL__NAME = ELEMENT__NAME;

	/**
	 * The feature id for the '<em><b>Notes</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DIAGONAL__NOTES = ELEMENT__NOTES;

	/**
	 * The feature id for the '<em><b>From</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DIAGONAL__FROM = ELEMENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>To</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DIAGONAL__TO = ELEMENT_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Distance</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DIAGONAL__DISTANCE = ELEMENT_FEATURE_COUNT + 2;

	/**
	 * The number of structural features of the '<em>Diagonal</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DIAGONAL_FEATURE_COUNT = ELEMENT_FEATURE_COUNT + 3;

	/**
	 * The number of operations of the '<em>Diagonal</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DIAGONAL_OPERATION_COUNT = ELEMENT_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link wainscribe.model.impl.PlacedImpl <em>Placed</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see wainscribe.model.impl.PlacedImpl
	 * @see wainscribe.model.impl.WainscribePackageImpl#getPlaced()
	 * @generated
	 */
	int PLACED = 6;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PLACED__ID = ELEMENT__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PLACED__NAME = ELEMENT__NAME;

	/**
	 * The feature id for the '<em><b>Notes</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PLACED__NOTES = ELEMENT__NOTES;

	/**
	 * The feature id for the '<em><b>X</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PLACED__X = ELEMENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Y</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PLACED__Y = ELEMENT_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Width</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PLACED__WIDTH = ELEMENT_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PLACED__HEIGHT = ELEMENT_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Depth</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PLACED__DEPTH = ELEMENT_FEATURE_COUNT + 4;

	/**
	 * The number of structural features of the '<em>Placed</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PLACED_FEATURE_COUNT = ELEMENT_FEATURE_COUNT + 5;

	/**
	 * The number of operations of the '<em>Placed</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PLACED_OPERATION_COUNT = ELEMENT_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link wainscribe.model.impl.OpeningImpl <em>Opening</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see wainscribe.model.impl.OpeningImpl
	 * @see wainscribe.model.impl.WainscribePackageImpl#getOpening()
	 * @generated
	 */
	int OPENING = 7;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OPENING__ID = PLACED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OPENING__NAME = PLACED__NAME;

	/**
	 * The feature id for the '<em><b>Notes</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OPENING__NOTES = PLACED__NOTES;

	/**
	 * The feature id for the '<em><b>X</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OPENING__X = PLACED__X;

	/**
	 * The feature id for the '<em><b>Y</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OPENING__Y = PLACED__Y;

	/**
	 * The feature id for the '<em><b>Width</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OPENING__WIDTH = PLACED__WIDTH;

	/**
	 * The feature id for the '<em><b>Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OPENING__HEIGHT = PLACED__HEIGHT;

	/**
	 * The feature id for the '<em><b>Depth</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OPENING__DEPTH = PLACED__DEPTH;

	/**
	 * The feature id for the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OPENING__KIND = PLACED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Casing</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OPENING__CASING = PLACED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Casing Depth</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OPENING__CASING_DEPTH = PLACED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Reveal</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OPENING__REVEAL = PLACED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Stool</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OPENING__STOOL = PLACED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Apron</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OPENING__APRON = PLACED_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Swing</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OPENING__SWING = PLACED_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Egress</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OPENING__EGRESS = PLACED_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Glazing</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OPENING__GLAZING = PLACED_FEATURE_COUNT + 8;

	/**
	 * The number of structural features of the '<em>Opening</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OPENING_FEATURE_COUNT = PLACED_FEATURE_COUNT + 9;

	/**
	 * The number of operations of the '<em>Opening</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OPENING_OPERATION_COUNT = PLACED_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link wainscribe.model.impl.FixtureImpl <em>Fixture</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see wainscribe.model.impl.FixtureImpl
	 * @see wainscribe.model.impl.WainscribePackageImpl#getFixture()
	 * @generated
	 */
	int FIXTURE = 8;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIXTURE__ID = PLACED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIXTURE__NAME = PLACED__NAME;

	/**
	 * The feature id for the '<em><b>Notes</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIXTURE__NOTES = PLACED__NOTES;

	/**
	 * The feature id for the '<em><b>X</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIXTURE__X = PLACED__X;

	/**
	 * The feature id for the '<em><b>Y</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIXTURE__Y = PLACED__Y;

	/**
	 * The feature id for the '<em><b>Width</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIXTURE__WIDTH = PLACED__WIDTH;

	/**
	 * The feature id for the '<em><b>Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIXTURE__HEIGHT = PLACED__HEIGHT;

	/**
	 * The feature id for the '<em><b>Depth</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIXTURE__DEPTH = PLACED__DEPTH;

	/**
	 * The feature id for the '<em><b>Type</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIXTURE__TYPE = PLACED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Heat</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIXTURE__HEAT = PLACED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Tank Gap</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIXTURE__TANK_GAP = PLACED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Tank Top</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIXTURE__TANK_TOP = PLACED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Wet Edge</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIXTURE__WET_EDGE = PLACED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Behind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIXTURE__BEHIND = PLACED_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Support</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIXTURE__SUPPORT = PLACED_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Fixing</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIXTURE__FIXING = PLACED_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Mass</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIXTURE__MASS = PLACED_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>Load</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIXTURE__LOAD = PLACED_FEATURE_COUNT + 9;

	/**
	 * The feature id for the '<em><b>Gap</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIXTURE__GAP = PLACED_FEATURE_COUNT + 10;

	/**
	 * The feature id for the '<em><b>Opening X</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIXTURE__OPENING_X = PLACED_FEATURE_COUNT + 11;

	/**
	 * The feature id for the '<em><b>Opening Width</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIXTURE__OPENING_WIDTH = PLACED_FEATURE_COUNT + 12;

	/**
	 * The feature id for the '<em><b>Opening Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIXTURE__OPENING_HEIGHT = PLACED_FEATURE_COUNT + 13;

	/**
	 * The feature id for the '<em><b>Planned</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIXTURE__PLANNED = PLACED_FEATURE_COUNT + 14;

	/**
	 * The feature id for the '<em><b>Framed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIXTURE__FRAMED = PLACED_FEATURE_COUNT + 15;

	/**
	 * The number of structural features of the '<em>Fixture</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIXTURE_FEATURE_COUNT = PLACED_FEATURE_COUNT + 16;

	/**
	 * The number of operations of the '<em>Fixture</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIXTURE_OPERATION_COUNT = PLACED_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link wainscribe.model.impl.BoxImpl <em>Box</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see wainscribe.model.impl.BoxImpl
	 * @see wainscribe.model.impl.WainscribePackageImpl#getBox()
	 * @generated
	 */
	int BOX = 9;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BOX__ID = PLACED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BOX__NAME = PLACED__NAME;

	/**
	 * The feature id for the '<em><b>Notes</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BOX__NOTES = PLACED__NOTES;

	/**
	 * The feature id for the '<em><b>X</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BOX__X = PLACED__X;

	/**
	 * The feature id for the '<em><b>Y</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BOX__Y = PLACED__Y;

	/**
	 * The feature id for the '<em><b>Width</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BOX__WIDTH = PLACED__WIDTH;

	/**
	 * The feature id for the '<em><b>Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BOX__HEIGHT = PLACED__HEIGHT;

	/**
	 * The feature id for the '<em><b>Depth</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BOX__DEPTH = PLACED__DEPTH;

	/**
	 * The feature id for the '<em><b>Type</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BOX__TYPE = PLACED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Gang</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BOX__GANG = PLACED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Gfci</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BOX__GFCI = PLACED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Shaver</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BOX__SHAVER = PLACED_FEATURE_COUNT + 3;

	/**
	 * The number of structural features of the '<em>Box</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BOX_FEATURE_COUNT = PLACED_FEATURE_COUNT + 4;

	/**
	 * The number of operations of the '<em>Box</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BOX_OPERATION_COUNT = PLACED_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link wainscribe.model.impl.ExistingTrimImpl <em>Existing Trim</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see wainscribe.model.impl.ExistingTrimImpl
	 * @see wainscribe.model.impl.WainscribePackageImpl#getExistingTrim()
	 * @generated
	 */
	int EXISTING_TRIM = 10;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EXISTING_TRIM__ID = PLACED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EXISTING_TRIM__NAME = PLACED__NAME;

	/**
	 * The feature id for the '<em><b>Notes</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EXISTING_TRIM__NOTES = PLACED__NOTES;

	/**
	 * The feature id for the '<em><b>X</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EXISTING_TRIM__X = PLACED__X;

	/**
	 * The feature id for the '<em><b>Y</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EXISTING_TRIM__Y = PLACED__Y;

	/**
	 * The feature id for the '<em><b>Width</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EXISTING_TRIM__WIDTH = PLACED__WIDTH;

	/**
	 * The feature id for the '<em><b>Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EXISTING_TRIM__HEIGHT = PLACED__HEIGHT;

	/**
	 * The feature id for the '<em><b>Depth</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EXISTING_TRIM__DEPTH = PLACED__DEPTH;

	/**
	 * The feature id for the '<em><b>Type</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EXISTING_TRIM__TYPE = PLACED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Keep</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EXISTING_TRIM__KEEP = PLACED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Raked</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EXISTING_TRIM__RAKED = PLACED_FEATURE_COUNT + 2;

	/**
	 * The number of structural features of the '<em>Existing Trim</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EXISTING_TRIM_FEATURE_COUNT = PLACED_FEATURE_COUNT + 3;

	/**
	 * The number of operations of the '<em>Existing Trim</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EXISTING_TRIM_OPERATION_COUNT = PLACED_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link wainscribe.model.impl.ServiceImpl <em>Service</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see wainscribe.model.impl.ServiceImpl
	 * @see wainscribe.model.impl.WainscribePackageImpl#getService()
	 * @generated
	 */
	int SERVICE = 11;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SERVICE__ID = PLACED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SERVICE__NAME = PLACED__NAME;

	/**
	 * The feature id for the '<em><b>Notes</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SERVICE__NOTES = PLACED__NOTES;

	/**
	 * The feature id for the '<em><b>X</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SERVICE__X = PLACED__X;

	/**
	 * The feature id for the '<em><b>Y</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SERVICE__Y = PLACED__Y;

	/**
	 * The feature id for the '<em><b>Width</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SERVICE__WIDTH = PLACED__WIDTH;

	/**
	 * The feature id for the '<em><b>Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SERVICE__HEIGHT = PLACED__HEIGHT;

	/**
	 * The feature id for the '<em><b>Depth</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SERVICE__DEPTH = PLACED__DEPTH;

	/**
	 * The feature id for the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SERVICE__KIND = PLACED_FEATURE_COUNT + 0;

	/**
	 * The number of structural features of the '<em>Service</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SERVICE_FEATURE_COUNT = PLACED_FEATURE_COUNT + 1;

	/**
	 * The number of operations of the '<em>Service</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SERVICE_OPERATION_COUNT = PLACED_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link wainscribe.model.impl.PlacedFrameImpl <em>Placed Frame</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see wainscribe.model.impl.PlacedFrameImpl
	 * @see wainscribe.model.impl.WainscribePackageImpl#getPlacedFrame()
	 * @generated
	 */
	int PLACED_FRAME = 12;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PLACED_FRAME__ID = PLACED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PLACED_FRAME__NAME = PLACED__NAME;

	/**
	 * The feature id for the '<em><b>Notes</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PLACED_FRAME__NOTES = PLACED__NOTES;

	/**
	 * The feature id for the '<em><b>X</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PLACED_FRAME__X = PLACED__X;

	/**
	 * The feature id for the '<em><b>Y</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PLACED_FRAME__Y = PLACED__Y;

	/**
	 * The feature id for the '<em><b>Width</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PLACED_FRAME__WIDTH = PLACED__WIDTH;

	/**
	 * The feature id for the '<em><b>Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PLACED_FRAME__HEIGHT = PLACED__HEIGHT;

	/**
	 * The feature id for the '<em><b>Depth</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PLACED_FRAME__DEPTH = PLACED__DEPTH;

	/**
	 * The number of structural features of the '<em>Placed Frame</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PLACED_FRAME_FEATURE_COUNT = PLACED_FEATURE_COUNT + 0;

	/**
	 * The number of operations of the '<em>Placed Frame</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PLACED_FRAME_OPERATION_COUNT = PLACED_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link wainscribe.model.impl.ReferenceLineImpl <em>Reference Line</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see wainscribe.model.impl.ReferenceLineImpl
	 * @see wainscribe.model.impl.WainscribePackageImpl#getReferenceLine()
	 * @generated
	 */
	int REFERENCE_LINE = 13;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int REFERENCE_LINE__ID = ELEMENT__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int REFERENCE_LINE__NAME = ELEMENT__NAME;

	/**
	 * The feature id for the '<em><b>Notes</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int REFERENCE_LINE__NOTES = ELEMENT__NOTES;

	/**
	 * The feature id for the '<em><b>At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int REFERENCE_LINE__AT = ELEMENT_FEATURE_COUNT + 0;

	/**
	 * The number of structural features of the '<em>Reference Line</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int REFERENCE_LINE_FEATURE_COUNT = ELEMENT_FEATURE_COUNT + 1;

	/**
	 * The number of operations of the '<em>Reference Line</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int REFERENCE_LINE_OPERATION_COUNT = ELEMENT_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link wainscribe.model.impl.AxisImpl <em>Axis</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see wainscribe.model.impl.AxisImpl
	 * @see wainscribe.model.impl.WainscribePackageImpl#getAxis()
	 * @generated
	 */
	int AXIS = 14;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AXIS__ID = REFERENCE_LINE__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AXIS__NAME = REFERENCE_LINE__NAME;

	/**
	 * The feature id for the '<em><b>Notes</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AXIS__NOTES = REFERENCE_LINE__NOTES;

	/**
	 * The feature id for the '<em><b>At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AXIS__AT = REFERENCE_LINE__AT;

	/**
	 * The number of structural features of the '<em>Axis</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AXIS_FEATURE_COUNT = REFERENCE_LINE_FEATURE_COUNT + 0;

	/**
	 * The number of operations of the '<em>Axis</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AXIS_OPERATION_COUNT = REFERENCE_LINE_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link wainscribe.model.impl.GuideImpl <em>Guide</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see wainscribe.model.impl.GuideImpl
	 * @see wainscribe.model.impl.WainscribePackageImpl#getGuide()
	 * @generated
	 */
	int GUIDE = 15;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GUIDE__ID = REFERENCE_LINE__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GUIDE__NAME = REFERENCE_LINE__NAME;

	/**
	 * The feature id for the '<em><b>Notes</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GUIDE__NOTES = REFERENCE_LINE__NOTES;

	/**
	 * The feature id for the '<em><b>At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GUIDE__AT = REFERENCE_LINE__AT;

	/**
	 * The number of structural features of the '<em>Guide</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GUIDE_FEATURE_COUNT = REFERENCE_LINE_FEATURE_COUNT + 0;

	/**
	 * The number of operations of the '<em>Guide</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GUIDE_OPERATION_COUNT = REFERENCE_LINE_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link wainscribe.model.impl.SurfaceZoneImpl <em>Surface Zone</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see wainscribe.model.impl.SurfaceZoneImpl
	 * @see wainscribe.model.impl.WainscribePackageImpl#getSurfaceZone()
	 * @generated
	 */
	int SURFACE_ZONE = 16;

	/**
	 * The feature id for the '<em><b>Surface</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SURFACE_ZONE__SURFACE = 0;

	/**
	 * The feature id for the '<em><b>Walls</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SURFACE_ZONE__WALLS = 1;

	/**
	 * The number of structural features of the '<em>Surface Zone</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SURFACE_ZONE_FEATURE_COUNT = 2;

	/**
	 * The number of operations of the '<em>Surface Zone</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SURFACE_ZONE_OPERATION_COUNT = 0;

	/**
	 * The meta object id for the '{@link wainscribe.model.impl.FinishImpl <em>Finish</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see wainscribe.model.impl.FinishImpl
	 * @see wainscribe.model.impl.WainscribePackageImpl#getFinish()
	 * @generated
	 */
	int FINISH = 17;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FINISH__ID = ELEMENT__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FINISH__NAME = ELEMENT__NAME;

	/**
	 * The feature id for the '<em><b>Notes</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FINISH__NOTES = ELEMENT__NOTES;

	/**
	 * The feature id for the '<em><b>Zone</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FINISH__ZONE = ELEMENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Gloss</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FINISH__GLOSS = ELEMENT_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Binder</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FINISH__BINDER = ELEMENT_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Substrate</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FINISH__SUBSTRATE = ELEMENT_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Sound</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FINISH__SOUND = ELEMENT_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Texture</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FINISH__TEXTURE = ELEMENT_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Disturb</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FINISH__DISTURB = ELEMENT_FEATURE_COUNT + 6;

	/**
	 * The number of structural features of the '<em>Finish</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FINISH_FEATURE_COUNT = ELEMENT_FEATURE_COUNT + 7;

	/**
	 * The number of operations of the '<em>Finish</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FINISH_OPERATION_COUNT = ELEMENT_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link wainscribe.model.impl.PaintImpl <em>Paint</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see wainscribe.model.impl.PaintImpl
	 * @see wainscribe.model.impl.WainscribePackageImpl#getPaint()
	 * @generated
	 */
	int PAINT = 18;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PAINT__ID = ELEMENT__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PAINT__NAME = ELEMENT__NAME;

	/**
	 * The feature id for the '<em><b>Notes</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PAINT__NOTES = ELEMENT__NOTES;

	/**
	 * The feature id for the '<em><b>Zone</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PAINT__ZONE = ELEMENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Colour</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PAINT__COLOUR = ELEMENT_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Gloss</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PAINT__GLOSS = ELEMENT_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Binder</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PAINT__BINDER = ELEMENT_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Scrub</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PAINT__SCRUB = ELEMENT_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Mildew</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PAINT__MILDEW = ELEMENT_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Coats</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PAINT__COATS = ELEMENT_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Clean</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PAINT__CLEAN = ELEMENT_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Degloss</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PAINT__DEGLOSS = ELEMENT_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>Primer</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PAINT__PRIMER = ELEMENT_FEATURE_COUNT + 9;

	/**
	 * The number of structural features of the '<em>Paint</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PAINT_FEATURE_COUNT = ELEMENT_FEATURE_COUNT + 10;

	/**
	 * The number of operations of the '<em>Paint</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PAINT_OPERATION_COUNT = ELEMENT_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link wainscribe.model.impl.ProfileReferenceImpl <em>Profile Reference</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see wainscribe.model.impl.ProfileReferenceImpl
	 * @see wainscribe.model.impl.WainscribePackageImpl#getProfileReference()
	 * @generated
	 */
	int PROFILE_REFERENCE = 19;

	/**
	 * The feature id for the '<em><b>Use</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROFILE_REFERENCE__USE = 0;

	/**
	 * The feature id for the '<em><b>Profile</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROFILE_REFERENCE__PROFILE = 1;

	/**
	 * The number of structural features of the '<em>Profile Reference</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROFILE_REFERENCE_FEATURE_COUNT = 2;

	/**
	 * The number of operations of the '<em>Profile Reference</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROFILE_REFERENCE_OPERATION_COUNT = 0;

	/**
	 * The meta object id for the '{@link wainscribe.model.impl.BriefImpl <em>Brief</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see wainscribe.model.impl.BriefImpl
	 * @see wainscribe.model.impl.WainscribePackageImpl#getBrief()
	 * @generated
	 */
	int BRIEF = 20;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BRIEF__ID = ELEMENT__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BRIEF__NAME = ELEMENT__NAME;

	/**
	 * The feature id for the '<em><b>Notes</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BRIEF__NOTES = ELEMENT__NOTES;

	/**
	 * The feature id for the '<em><b>Pattern</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BRIEF__PATTERN = ELEMENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Rail</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BRIEF__RAIL = ELEMENT_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Rail Face</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BRIEF__RAIL_FACE = ELEMENT_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Rail Thickness</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BRIEF__RAIL_THICKNESS = ELEMENT_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Gap</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BRIEF__GAP = ELEMENT_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Gap Y</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BRIEF__GAP_Y = ELEMENT_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Face</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BRIEF__FACE = ELEMENT_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Thickness</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BRIEF__THICKNESS = ELEMENT_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Frame Width Min</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BRIEF__FRAME_WIDTH_MIN = ELEMENT_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>Frame Width Max</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BRIEF__FRAME_WIDTH_MAX = ELEMENT_FEATURE_COUNT + 9;

	/**
	 * The feature id for the '<em><b>Base</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BRIEF__BASE = ELEMENT_FEATURE_COUNT + 10;

	/**
	 * The feature id for the '<em><b>Crown</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BRIEF__CROWN = ELEMENT_FEATURE_COUNT + 11;

	/**
	 * The feature id for the '<em><b>Material</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BRIEF__MATERIAL = ELEMENT_FEATURE_COUNT + 12;

	/**
	 * The feature id for the '<em><b>Stock</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BRIEF__STOCK = ELEMENT_FEATURE_COUNT + 13;

	/**
	 * The feature id for the '<em><b>Nail</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BRIEF__NAIL = ELEMENT_FEATURE_COUNT + 14;

	/**
	 * The feature id for the '<em><b>Board</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BRIEF__BOARD = ELEMENT_FEATURE_COUNT + 15;

	/**
	 * The feature id for the '<em><b>Board Walls</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BRIEF__BOARD_WALLS = ELEMENT_FEATURE_COUNT + 16;

	/**
	 * The feature id for the '<em><b>Profiles</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BRIEF__PROFILES = ELEMENT_FEATURE_COUNT + 17;

	/**
	 * The feature id for the '<em><b>Inside</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BRIEF__INSIDE = ELEMENT_FEATURE_COUNT + 18;

	/**
	 * The feature id for the '<em><b>Base At Casing</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BRIEF__BASE_AT_CASING = ELEMENT_FEATURE_COUNT + 19;

	/**
	 * The feature id for the '<em><b>Saw</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BRIEF__SAW = ELEMENT_FEATURE_COUNT + 20;

	/**
	 * The feature id for the '<em><b>Glass Lap</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BRIEF__GLASS_LAP = ELEMENT_FEATURE_COUNT + 21;

	/**
	 * The feature id for the '<em><b>Glass Clearance</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BRIEF__GLASS_CLEARANCE = ELEMENT_FEATURE_COUNT + 22;

	/**
	 * The number of structural features of the '<em>Brief</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BRIEF_FEATURE_COUNT = ELEMENT_FEATURE_COUNT + 23;

	/**
	 * The number of operations of the '<em>Brief</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BRIEF_OPERATION_COUNT = ELEMENT_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link wainscribe.model.impl.PriceImpl <em>Price</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see wainscribe.model.impl.PriceImpl
	 * @see wainscribe.model.impl.WainscribePackageImpl#getPrice()
	 * @generated
	 */
	int PRICE = 21;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRICE__ID = ELEMENT__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRICE__NAME = ELEMENT__NAME;

	/**
	 * The feature id for the '<em><b>Notes</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRICE__NOTES = ELEMENT__NOTES;

	/**
	 * The feature id for the '<em><b>Item</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRICE__ITEM = ELEMENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Unit</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRICE__UNIT = ELEMENT_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Pack Length</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRICE__PACK_LENGTH = ELEMENT_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Pack</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRICE__PACK = ELEMENT_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Amount</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRICE__AMOUNT = ELEMENT_FEATURE_COUNT + 4;

	/**
	 * The number of structural features of the '<em>Price</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRICE_FEATURE_COUNT = ELEMENT_FEATURE_COUNT + 5;

	/**
	 * The number of operations of the '<em>Price</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRICE_OPERATION_COUNT = ELEMENT_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link wainscribe.model.impl.StoredOffcutImpl <em>Stored Offcut</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see wainscribe.model.impl.StoredOffcutImpl
	 * @see wainscribe.model.impl.WainscribePackageImpl#getStoredOffcut()
	 * @generated
	 */
	int STORED_OFFCUT = 22;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STORED_OFFCUT__ID = ELEMENT__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STORED_OFFCUT__NAME = ELEMENT__NAME;

	/**
	 * The feature id for the '<em><b>Notes</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STORED_OFFCUT__NOTES = ELEMENT__NOTES;

	/**
	 * The feature id for the '<em><b>Profile</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STORED_OFFCUT__PROFILE = ELEMENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Material</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STORED_OFFCUT__MATERIAL = ELEMENT_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Length</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STORED_OFFCUT__LENGTH = ELEMENT_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Origin</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STORED_OFFCUT__ORIGIN = ELEMENT_FEATURE_COUNT + 3;

	/**
	 * The number of structural features of the '<em>Stored Offcut</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STORED_OFFCUT_FEATURE_COUNT = ELEMENT_FEATURE_COUNT + 4;

	/**
	 * The number of operations of the '<em>Stored Offcut</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STORED_OFFCUT_OPERATION_COUNT = ELEMENT_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link wainscribe.model.impl.CutBarImpl <em>Cut Bar</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see wainscribe.model.impl.CutBarImpl
	 * @see wainscribe.model.impl.WainscribePackageImpl#getCutBar()
	 * @generated
	 */
	int CUT_BAR = 23;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CUT_BAR__ID = ELEMENT__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CUT_BAR__NAME = ELEMENT__NAME;

	/**
	 * The feature id for the '<em><b>Notes</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CUT_BAR__NOTES = ELEMENT__NOTES;

	/**
	 * The feature id for the '<em><b>Profile</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CUT_BAR__PROFILE = ELEMENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Material</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CUT_BAR__MATERIAL = ELEMENT_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Length</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CUT_BAR__LENGTH = ELEMENT_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Price</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CUT_BAR__PRICE = ELEMENT_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Pieces</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CUT_BAR__PIECES = ELEMENT_FEATURE_COUNT + 4;

	/**
	 * The number of structural features of the '<em>Cut Bar</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CUT_BAR_FEATURE_COUNT = ELEMENT_FEATURE_COUNT + 5;

	/**
	 * The number of operations of the '<em>Cut Bar</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CUT_BAR_OPERATION_COUNT = ELEMENT_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link wainscribe.model.impl.CutPieceImpl <em>Cut Piece</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see wainscribe.model.impl.CutPieceImpl
	 * @see wainscribe.model.impl.WainscribePackageImpl#getCutPiece()
	 * @generated
	 */
	int CUT_PIECE = 24;

	/**
	 * The feature id for the '<em><b>Room</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CUT_PIECE__ROOM = 0;

	/**
	 * The feature id for the '<em><b>Label</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CUT_PIECE__LABEL = 1;

	/**
	 * The feature id for the '<em><b>Length</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CUT_PIECE__LENGTH = 2;

	/**
	 * The number of structural features of the '<em>Cut Piece</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CUT_PIECE_FEATURE_COUNT = 3;

	/**
	 * The number of operations of the '<em>Cut Piece</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CUT_PIECE_OPERATION_COUNT = 0;

	/**
	 * The meta object id for the '{@link wainscribe.model.RoomUse <em>Room Use</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see wainscribe.model.RoomUse
	 * @see wainscribe.model.impl.WainscribePackageImpl#getRoomUse()
	 * @generated
	 */
	int ROOM_USE = 25;

	/**
	 * The meta object id for the '{@link wainscribe.model.FanOutlet <em>Fan Outlet</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see wainscribe.model.FanOutlet
	 * @see wainscribe.model.impl.WainscribePackageImpl#getFanOutlet()
	 * @generated
	 */
	int FAN_OUTLET = 26;

	/**
	 * The meta object id for the '{@link wainscribe.model.FanMode <em>Fan Mode</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see wainscribe.model.FanMode
	 * @see wainscribe.model.impl.WainscribePackageImpl#getFanMode()
	 * @generated
	 */
	int FAN_MODE = 27;

	/**
	 * The meta object id for the '{@link wainscribe.model.OpeningKind <em>Opening Kind</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see wainscribe.model.OpeningKind
	 * @see wainscribe.model.impl.WainscribePackageImpl#getOpeningKind()
	 * @generated
	 */
	int OPENING_KIND = 28;

	/**
	 * The meta object id for the '{@link wainscribe.model.Swing <em>Swing</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see wainscribe.model.Swing
	 * @see wainscribe.model.impl.WainscribePackageImpl#getSwing()
	 * @generated
	 */
	int SWING = 29;

	/**
	 * The meta object id for the '{@link wainscribe.model.Glazing <em>Glazing</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see wainscribe.model.Glazing
	 * @see wainscribe.model.impl.WainscribePackageImpl#getGlazing()
	 * @generated
	 */
	int GLAZING = 30;

	/**
	 * The meta object id for the '{@link wainscribe.model.BoxType <em>Box Type</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see wainscribe.model.BoxType
	 * @see wainscribe.model.impl.WainscribePackageImpl#getBoxType()
	 * @generated
	 */
	int BOX_TYPE = 31;

	/**
	 * The meta object id for the '{@link wainscribe.model.FixtureType <em>Fixture Type</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see wainscribe.model.FixtureType
	 * @see wainscribe.model.impl.WainscribePackageImpl#getFixtureType()
	 * @generated
	 */
	int FIXTURE_TYPE = 32;

	/**
	 * The meta object id for the '{@link wainscribe.model.HeatSource <em>Heat Source</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see wainscribe.model.HeatSource
	 * @see wainscribe.model.impl.WainscribePackageImpl#getHeatSource()
	 * @generated
	 */
	int HEAT_SOURCE = 33;

	/**
	 * The meta object id for the '{@link wainscribe.model.Support <em>Support</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see wainscribe.model.Support
	 * @see wainscribe.model.impl.WainscribePackageImpl#getSupport()
	 * @generated
	 */
	int SUPPORT = 34;

	/**
	 * The meta object id for the '{@link wainscribe.model.Fixing <em>Fixing</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see wainscribe.model.Fixing
	 * @see wainscribe.model.impl.WainscribePackageImpl#getFixing()
	 * @generated
	 */
	int FIXING = 35;

	/**
	 * The meta object id for the '{@link wainscribe.model.TrimType <em>Trim Type</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see wainscribe.model.TrimType
	 * @see wainscribe.model.impl.WainscribePackageImpl#getTrimType()
	 * @generated
	 */
	int TRIM_TYPE = 36;

	/**
	 * The meta object id for the '{@link wainscribe.model.ServiceKind <em>Service Kind</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see wainscribe.model.ServiceKind
	 * @see wainscribe.model.impl.WainscribePackageImpl#getServiceKind()
	 * @generated
	 */
	int SERVICE_KIND = 37;

	/**
	 * The meta object id for the '{@link wainscribe.model.Surface <em>Surface</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see wainscribe.model.Surface
	 * @see wainscribe.model.impl.WainscribePackageImpl#getSurface()
	 * @generated
	 */
	int SURFACE = 38;

	/**
	 * The meta object id for the '{@link wainscribe.model.GlossLevel <em>Gloss Level</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see wainscribe.model.GlossLevel
	 * @see wainscribe.model.impl.WainscribePackageImpl#getGlossLevel()
	 * @generated
	 */
	int GLOSS_LEVEL = 39;

	/**
	 * The meta object id for the '{@link wainscribe.model.Binder <em>Binder</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see wainscribe.model.Binder
	 * @see wainscribe.model.impl.WainscribePackageImpl#getBinder()
	 * @generated
	 */
	int BINDER = 40;

	/**
	 * The meta object id for the '{@link wainscribe.model.Substrate <em>Substrate</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see wainscribe.model.Substrate
	 * @see wainscribe.model.impl.WainscribePackageImpl#getSubstrate()
	 * @generated
	 */
	int SUBSTRATE = 41;

	/**
	 * The meta object id for the '{@link wainscribe.model.Soundness <em>Soundness</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see wainscribe.model.Soundness
	 * @see wainscribe.model.impl.WainscribePackageImpl#getSoundness()
	 * @generated
	 */
	int SOUNDNESS = 42;

	/**
	 * The meta object id for the '{@link wainscribe.model.Primer <em>Primer</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see wainscribe.model.Primer
	 * @see wainscribe.model.impl.WainscribePackageImpl#getPrimer()
	 * @generated
	 */
	int PRIMER = 43;

	/**
	 * The meta object id for the '{@link wainscribe.model.Material <em>Material</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see wainscribe.model.Material
	 * @see wainscribe.model.impl.WainscribePackageImpl#getMaterial()
	 * @generated
	 */
	int MATERIAL = 44;

	/**
	 * The meta object id for the '{@link wainscribe.model.InsideJoint <em>Inside Joint</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see wainscribe.model.InsideJoint
	 * @see wainscribe.model.impl.WainscribePackageImpl#getInsideJoint()
	 * @generated
	 */
	int INSIDE_JOINT = 45;

	/**
	 * The meta object id for the '{@link wainscribe.model.CasingJoint <em>Casing Joint</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see wainscribe.model.CasingJoint
	 * @see wainscribe.model.impl.WainscribePackageImpl#getCasingJoint()
	 * @generated
	 */
	int CASING_JOINT = 46;

	/**
	 * The meta object id for the '{@link wainscribe.model.SawScale <em>Saw Scale</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see wainscribe.model.SawScale
	 * @see wainscribe.model.impl.WainscribePackageImpl#getSawScale()
	 * @generated
	 */
	int SAW_SCALE = 47;

	/**
	 * The meta object id for the '{@link wainscribe.model.ProfileUse <em>Profile Use</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see wainscribe.model.ProfileUse
	 * @see wainscribe.model.impl.WainscribePackageImpl#getProfileUse()
	 * @generated
	 */
	int PROFILE_USE = 48;

	/**
	 * The meta object id for the '{@link wainscribe.model.PriceUnit <em>Price Unit</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see wainscribe.model.PriceUnit
	 * @see wainscribe.model.impl.WainscribePackageImpl#getPriceUnit()
	 * @generated
	 */
	int PRICE_UNIT = 49;

	/**
	 * The meta object id for the '<em>Length</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see wainscribe.model.length.Length
	 * @see wainscribe.model.impl.WainscribePackageImpl#getLength()
	 * @generated
	 */
	int LENGTH = 50;

	/**
	 * The meta object id for the '<em>Length Unit</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see wainscribe.model.length.LengthUnit
	 * @see wainscribe.model.impl.WainscribePackageImpl#getLengthUnit()
	 * @generated
	 */
	int LENGTH_UNIT = 51;

	/**
	 * The meta object id for the '<em>Measure</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see wainscribe.model.measure.Measure
	 * @see wainscribe.model.impl.WainscribePackageImpl#getMeasure()
	 * @generated
	 */
	int MEASURE = 52;


	/**
	 * Returns the meta object for class '{@link wainscribe.model.Element <em>Element</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Element</em>'.
	 * @see wainscribe.model.Element
	 * @generated
	 */
	EClass getElement();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Element#getId <em>Id</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Id</em>'.
	 * @see wainscribe.model.Element#getId()
	 * @see #getElement()
	 * @generated
	 */
	EAttribute getElement_Id();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Element#getName <em>Name</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Name</em>'.
	 * @see wainscribe.model.Element#getName()
	 * @see #getElement()
	 * @generated
	 */
	EAttribute getElement_Name();

	/**
	 * Returns the meta object for the attribute list '{@link wainscribe.model.Element#getNotes <em>Notes</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute list '<em>Notes</em>'.
	 * @see wainscribe.model.Element#getNotes()
	 * @see #getElement()
	 * @generated
	 */
	EAttribute getElement_Notes();

	/**
	 * Returns the meta object for class '{@link wainscribe.model.Home <em>Home</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Home</em>'.
	 * @see wainscribe.model.Home
	 * @generated
	 */
	EClass getHome();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Home#getFormatVersion <em>Format Version</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Format Version</em>'.
	 * @see wainscribe.model.Home#getFormatVersion()
	 * @see #getHome()
	 * @generated
	 */
	EAttribute getHome_FormatVersion();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Home#getUnits <em>Units</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Units</em>'.
	 * @see wainscribe.model.Home#getUnits()
	 * @see #getHome()
	 * @generated
	 */
	EAttribute getHome_Units();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Home#getCountry <em>Country</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Country</em>'.
	 * @see wainscribe.model.Home#getCountry()
	 * @see #getHome()
	 * @generated
	 */
	EAttribute getHome_Country();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Home#getBuilt <em>Built</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Built</em>'.
	 * @see wainscribe.model.Home#getBuilt()
	 * @see #getHome()
	 * @generated
	 */
	EAttribute getHome_Built();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Home#getCurrency <em>Currency</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Currency</em>'.
	 * @see wainscribe.model.Home#getCurrency()
	 * @see #getHome()
	 * @generated
	 */
	EAttribute getHome_Currency();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Home#getTax <em>Tax</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Tax</em>'.
	 * @see wainscribe.model.Home#getTax()
	 * @see #getHome()
	 * @generated
	 */
	EAttribute getHome_Tax();

	/**
	 * Returns the meta object for the attribute list '{@link wainscribe.model.Home#getRoomOrder <em>Room Order</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute list '<em>Room Order</em>'.
	 * @see wainscribe.model.Home#getRoomOrder()
	 * @see #getHome()
	 * @generated
	 */
	EAttribute getHome_RoomOrder();

	/**
	 * Returns the meta object for the containment reference '{@link wainscribe.model.Home#getBrief <em>Brief</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Brief</em>'.
	 * @see wainscribe.model.Home#getBrief()
	 * @see #getHome()
	 * @generated
	 */
	EReference getHome_Brief();

	/**
	 * Returns the meta object for the containment reference list '{@link wainscribe.model.Home#getPaints <em>Paints</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Paints</em>'.
	 * @see wainscribe.model.Home#getPaints()
	 * @see #getHome()
	 * @generated
	 */
	EReference getHome_Paints();

	/**
	 * Returns the meta object for the containment reference list '{@link wainscribe.model.Home#getPrices <em>Prices</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Prices</em>'.
	 * @see wainscribe.model.Home#getPrices()
	 * @see #getHome()
	 * @generated
	 */
	EReference getHome_Prices();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Home#getKerf <em>Kerf</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Kerf</em>'.
	 * @see wainscribe.model.Home#getKerf()
	 * @see #getHome()
	 * @generated
	 */
	EAttribute getHome_Kerf();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Home#getEndTrim <em>End Trim</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>End Trim</em>'.
	 * @see wainscribe.model.Home#getEndTrim()
	 * @see #getHome()
	 * @generated
	 */
	EAttribute getHome_EndTrim();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Home#getShortestOffcut <em>Shortest Offcut</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Shortest Offcut</em>'.
	 * @see wainscribe.model.Home#getShortestOffcut()
	 * @see #getHome()
	 * @generated
	 */
	EAttribute getHome_ShortestOffcut();

	/**
	 * Returns the meta object for the containment reference list '{@link wainscribe.model.Home#getOffcuts <em>Offcuts</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Offcuts</em>'.
	 * @see wainscribe.model.Home#getOffcuts()
	 * @see #getHome()
	 * @generated
	 */
	EReference getHome_Offcuts();

	/**
	 * Returns the meta object for the containment reference list '{@link wainscribe.model.Home#getCutBars <em>Cut Bars</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Cut Bars</em>'.
	 * @see wainscribe.model.Home#getCutBars()
	 * @see #getHome()
	 * @generated
	 */
	EReference getHome_CutBars();

	/**
	 * Returns the meta object for class '{@link wainscribe.model.Room <em>Room</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Room</em>'.
	 * @see wainscribe.model.Room
	 * @generated
	 */
	EClass getRoom();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Room#getFormatVersion <em>Format Version</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Format Version</em>'.
	 * @see wainscribe.model.Room#getFormatVersion()
	 * @see #getRoom()
	 * @generated
	 */
	EAttribute getRoom_FormatVersion();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Room#getUse <em>Use</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Use</em>'.
	 * @see wainscribe.model.Room#getUse()
	 * @see #getRoom()
	 * @generated
	 */
	EAttribute getRoom_Use();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Room#getHeight <em>Height</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Height</em>'.
	 * @see wainscribe.model.Room#getHeight()
	 * @see #getRoom()
	 * @generated
	 */
	EAttribute getRoom_Height();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Room#getAir <em>Air</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Air</em>'.
	 * @see wainscribe.model.Room#getAir()
	 * @see #getRoom()
	 * @generated
	 */
	EAttribute getRoom_Air();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Room#getHumidity <em>Humidity</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Humidity</em>'.
	 * @see wainscribe.model.Room#getHumidity()
	 * @see #getRoom()
	 * @generated
	 */
	EAttribute getRoom_Humidity();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Room#getSurfaceTemperature <em>Surface Temperature</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Surface Temperature</em>'.
	 * @see wainscribe.model.Room#getSurfaceTemperature()
	 * @see #getRoom()
	 * @generated
	 */
	EAttribute getRoom_SurfaceTemperature();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Room#getFan <em>Fan</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Fan</em>'.
	 * @see wainscribe.model.Room#getFan()
	 * @see #getRoom()
	 * @generated
	 */
	EAttribute getRoom_Fan();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Room#getFanOutlet <em>Fan Outlet</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Fan Outlet</em>'.
	 * @see wainscribe.model.Room#getFanOutlet()
	 * @see #getRoom()
	 * @generated
	 */
	EAttribute getRoom_FanOutlet();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Room#getFanMode <em>Fan Mode</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Fan Mode</em>'.
	 * @see wainscribe.model.Room#getFanMode()
	 * @see #getRoom()
	 * @generated
	 */
	EAttribute getRoom_FanMode();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Room#getOpen <em>Open</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Open</em>'.
	 * @see wainscribe.model.Room#getOpen()
	 * @see #getRoom()
	 * @generated
	 */
	EAttribute getRoom_Open();

	/**
	 * Returns the meta object for the containment reference list '{@link wainscribe.model.Room#getWalls <em>Walls</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Walls</em>'.
	 * @see wainscribe.model.Room#getWalls()
	 * @see #getRoom()
	 * @generated
	 */
	EReference getRoom_Walls();

	/**
	 * Returns the meta object for the containment reference list '{@link wainscribe.model.Room#getDiagonals <em>Diagonals</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Diagonals</em>'.
	 * @see wainscribe.model.Room#getDiagonals()
	 * @see #getRoom()
	 * @generated
	 */
	EReference getRoom_Diagonals();

	/**
	 * Returns the meta object for the containment reference list '{@link wainscribe.model.Room#getFinishes <em>Finishes</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Finishes</em>'.
	 * @see wainscribe.model.Room#getFinishes()
	 * @see #getRoom()
	 * @generated
	 */
	EReference getRoom_Finishes();

	/**
	 * Returns the meta object for the containment reference '{@link wainscribe.model.Room#getBrief <em>Brief</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Brief</em>'.
	 * @see wainscribe.model.Room#getBrief()
	 * @see #getRoom()
	 * @generated
	 */
	EReference getRoom_Brief();

	/**
	 * Returns the meta object for the containment reference list '{@link wainscribe.model.Room#getPaints <em>Paints</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Paints</em>'.
	 * @see wainscribe.model.Room#getPaints()
	 * @see #getRoom()
	 * @generated
	 */
	EReference getRoom_Paints();

	/**
	 * Returns the meta object for the containment reference list '{@link wainscribe.model.Room#getGuides <em>Guides</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Guides</em>'.
	 * @see wainscribe.model.Room#getGuides()
	 * @see #getRoom()
	 * @generated
	 */
	EReference getRoom_Guides();

	/**
	 * Returns the meta object for class '{@link wainscribe.model.Wall <em>Wall</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Wall</em>'.
	 * @see wainscribe.model.Wall
	 * @generated
	 */
	EClass getWall();

	/**
	 * Returns the meta object for the container reference '{@link wainscribe.model.Wall#getRoom <em>Room</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the container reference '<em>Room</em>'.
	 * @see wainscribe.model.Wall#getRoom()
	 * @see #getWall()
	 * @generated
	 */
	EReference getWall_Room();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Wall#getLength <em>Length</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Length</em>'.
	 * @see wainscribe.model.Wall#getLength()
	 * @see #getWall()
	 * @generated
	 */
	EAttribute getWall_Length();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Wall#getHeight <em>Height</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Height</em>'.
	 * @see wainscribe.model.Wall#getHeight()
	 * @see #getWall()
	 * @generated
	 */
	EAttribute getWall_Height();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Wall#getHeightRight <em>Height Right</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Height Right</em>'.
	 * @see wainscribe.model.Wall#getHeightRight()
	 * @see #getWall()
	 * @generated
	 */
	EAttribute getWall_HeightRight();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Wall#getFloorRight <em>Floor Right</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Floor Right</em>'.
	 * @see wainscribe.model.Wall#getFloorRight()
	 * @see #getWall()
	 * @generated
	 */
	EAttribute getWall_FloorRight();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Wall#getAngle <em>Angle</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Angle</em>'.
	 * @see wainscribe.model.Wall#getAngle()
	 * @see #getWall()
	 * @generated
	 */
	EAttribute getWall_Angle();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Wall#getBow <em>Bow</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Bow</em>'.
	 * @see wainscribe.model.Wall#getBow()
	 * @see #getWall()
	 * @generated
	 */
	EAttribute getWall_Bow();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Wall#getPlumbing <em>Plumbing</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Plumbing</em>'.
	 * @see wainscribe.model.Wall#getPlumbing()
	 * @see #getWall()
	 * @generated
	 */
	EAttribute getWall_Plumbing();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Wall#getRated <em>Rated</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Rated</em>'.
	 * @see wainscribe.model.Wall#getRated()
	 * @see #getWall()
	 * @generated
	 */
	EAttribute getWall_Rated();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Wall#getWallboard <em>Wallboard</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Wallboard</em>'.
	 * @see wainscribe.model.Wall#getWallboard()
	 * @see #getWall()
	 * @generated
	 */
	EAttribute getWall_Wallboard();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Wall#getStudSpacing <em>Stud Spacing</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Stud Spacing</em>'.
	 * @see wainscribe.model.Wall#getStudSpacing()
	 * @see #getWall()
	 * @generated
	 */
	EAttribute getWall_StudSpacing();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Wall#getStudSpacingUnknown <em>Stud Spacing Unknown</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Stud Spacing Unknown</em>'.
	 * @see wainscribe.model.Wall#getStudSpacingUnknown()
	 * @see #getWall()
	 * @generated
	 */
	EAttribute getWall_StudSpacingUnknown();

	/**
	 * Returns the meta object for the containment reference '{@link wainscribe.model.Wall#getCorner <em>Corner</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Corner</em>'.
	 * @see wainscribe.model.Wall#getCorner()
	 * @see #getWall()
	 * @generated
	 */
	EReference getWall_Corner();

	/**
	 * Returns the meta object for the containment reference list '{@link wainscribe.model.Wall#getOpenings <em>Openings</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Openings</em>'.
	 * @see wainscribe.model.Wall#getOpenings()
	 * @see #getWall()
	 * @generated
	 */
	EReference getWall_Openings();

	/**
	 * Returns the meta object for the containment reference list '{@link wainscribe.model.Wall#getFixtures <em>Fixtures</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Fixtures</em>'.
	 * @see wainscribe.model.Wall#getFixtures()
	 * @see #getWall()
	 * @generated
	 */
	EReference getWall_Fixtures();

	/**
	 * Returns the meta object for the containment reference list '{@link wainscribe.model.Wall#getBoxes <em>Boxes</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Boxes</em>'.
	 * @see wainscribe.model.Wall#getBoxes()
	 * @see #getWall()
	 * @generated
	 */
	EReference getWall_Boxes();

	/**
	 * Returns the meta object for the containment reference list '{@link wainscribe.model.Wall#getTrims <em>Trims</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Trims</em>'.
	 * @see wainscribe.model.Wall#getTrims()
	 * @see #getWall()
	 * @generated
	 */
	EReference getWall_Trims();

	/**
	 * Returns the meta object for the containment reference list '{@link wainscribe.model.Wall#getServices <em>Services</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Services</em>'.
	 * @see wainscribe.model.Wall#getServices()
	 * @see #getWall()
	 * @generated
	 */
	EReference getWall_Services();

	/**
	 * Returns the meta object for the containment reference list '{@link wainscribe.model.Wall#getPlacedFrames <em>Placed Frames</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Placed Frames</em>'.
	 * @see wainscribe.model.Wall#getPlacedFrames()
	 * @see #getWall()
	 * @generated
	 */
	EReference getWall_PlacedFrames();

	/**
	 * Returns the meta object for the containment reference list '{@link wainscribe.model.Wall#getAxes <em>Axes</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Axes</em>'.
	 * @see wainscribe.model.Wall#getAxes()
	 * @see #getWall()
	 * @generated
	 */
	EReference getWall_Axes();

	/**
	 * Returns the meta object for the containment reference list '{@link wainscribe.model.Wall#getGuides <em>Guides</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Guides</em>'.
	 * @see wainscribe.model.Wall#getGuides()
	 * @see #getWall()
	 * @generated
	 */
	EReference getWall_Guides();

	/**
	 * Returns the meta object for class '{@link wainscribe.model.Corner <em>Corner</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Corner</em>'.
	 * @see wainscribe.model.Corner
	 * @generated
	 */
	EClass getCorner();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Corner#getLegThis <em>Leg This</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Leg This</em>'.
	 * @see wainscribe.model.Corner#getLegThis()
	 * @see #getCorner()
	 * @generated
	 */
	EAttribute getCorner_LegThis();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Corner#getLegNext <em>Leg Next</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Leg Next</em>'.
	 * @see wainscribe.model.Corner#getLegNext()
	 * @see #getCorner()
	 * @generated
	 */
	EAttribute getCorner_LegNext();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Corner#getDiagonal <em>Diagonal</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Diagonal</em>'.
	 * @see wainscribe.model.Corner#getDiagonal()
	 * @see #getCorner()
	 * @generated
	 */
	EAttribute getCorner_Diagonal();

	/**
	 * Returns the meta object for class '{@link wainscribe.model.Diagonal <em>Diagonal</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Diagonal</em>'.
	 * @see wainscribe.model.Diagonal
	 * @generated
	 */
	EClass getDiagonal();

	/**
	 * Returns the meta object for the reference '{@link wainscribe.model.Diagonal#getFrom <em>From</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>From</em>'.
	 * @see wainscribe.model.Diagonal#getFrom()
	 * @see #getDiagonal()
	 * @generated
	 */
	EReference getDiagonal_From();

	/**
	 * Returns the meta object for the reference '{@link wainscribe.model.Diagonal#getTo <em>To</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>To</em>'.
	 * @see wainscribe.model.Diagonal#getTo()
	 * @see #getDiagonal()
	 * @generated
	 */
	EReference getDiagonal_To();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Diagonal#getDistance <em>Distance</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Distance</em>'.
	 * @see wainscribe.model.Diagonal#getDistance()
	 * @see #getDiagonal()
	 * @generated
	 */
	EAttribute getDiagonal_Distance();

	/**
	 * Returns the meta object for class '{@link wainscribe.model.Placed <em>Placed</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Placed</em>'.
	 * @see wainscribe.model.Placed
	 * @generated
	 */
	EClass getPlaced();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Placed#getX <em>X</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>X</em>'.
	 * @see wainscribe.model.Placed#getX()
	 * @see #getPlaced()
	 * @generated
	 */
	EAttribute getPlaced_X();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Placed#getY <em>Y</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Y</em>'.
	 * @see wainscribe.model.Placed#getY()
	 * @see #getPlaced()
	 * @generated
	 */
	EAttribute getPlaced_Y();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Placed#getWidth <em>Width</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Width</em>'.
	 * @see wainscribe.model.Placed#getWidth()
	 * @see #getPlaced()
	 * @generated
	 */
	EAttribute getPlaced_Width();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Placed#getHeight <em>Height</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Height</em>'.
	 * @see wainscribe.model.Placed#getHeight()
	 * @see #getPlaced()
	 * @generated
	 */
	EAttribute getPlaced_Height();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Placed#getDepth <em>Depth</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Depth</em>'.
	 * @see wainscribe.model.Placed#getDepth()
	 * @see #getPlaced()
	 * @generated
	 */
	EAttribute getPlaced_Depth();

	/**
	 * Returns the meta object for class '{@link wainscribe.model.Opening <em>Opening</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Opening</em>'.
	 * @see wainscribe.model.Opening
	 * @generated
	 */
	EClass getOpening();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Opening#getKind <em>Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Kind</em>'.
	 * @see wainscribe.model.Opening#getKind()
	 * @see #getOpening()
	 * @generated
	 */
	EAttribute getOpening_Kind();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Opening#getCasing <em>Casing</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Casing</em>'.
	 * @see wainscribe.model.Opening#getCasing()
	 * @see #getOpening()
	 * @generated
	 */
	EAttribute getOpening_Casing();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Opening#getCasingDepth <em>Casing Depth</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Casing Depth</em>'.
	 * @see wainscribe.model.Opening#getCasingDepth()
	 * @see #getOpening()
	 * @generated
	 */
	EAttribute getOpening_CasingDepth();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Opening#getReveal <em>Reveal</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Reveal</em>'.
	 * @see wainscribe.model.Opening#getReveal()
	 * @see #getOpening()
	 * @generated
	 */
	EAttribute getOpening_Reveal();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Opening#getStool <em>Stool</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Stool</em>'.
	 * @see wainscribe.model.Opening#getStool()
	 * @see #getOpening()
	 * @generated
	 */
	EAttribute getOpening_Stool();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Opening#getApron <em>Apron</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Apron</em>'.
	 * @see wainscribe.model.Opening#getApron()
	 * @see #getOpening()
	 * @generated
	 */
	EAttribute getOpening_Apron();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Opening#getSwing <em>Swing</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Swing</em>'.
	 * @see wainscribe.model.Opening#getSwing()
	 * @see #getOpening()
	 * @generated
	 */
	EAttribute getOpening_Swing();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Opening#getEgress <em>Egress</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Egress</em>'.
	 * @see wainscribe.model.Opening#getEgress()
	 * @see #getOpening()
	 * @generated
	 */
	EAttribute getOpening_Egress();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Opening#getGlazing <em>Glazing</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Glazing</em>'.
	 * @see wainscribe.model.Opening#getGlazing()
	 * @see #getOpening()
	 * @generated
	 */
	EAttribute getOpening_Glazing();

	/**
	 * Returns the meta object for class '{@link wainscribe.model.Fixture <em>Fixture</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Fixture</em>'.
	 * @see wainscribe.model.Fixture
	 * @generated
	 */
	EClass getFixture();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Fixture#getType <em>Type</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Type</em>'.
	 * @see wainscribe.model.Fixture#getType()
	 * @see #getFixture()
	 * @generated
	 */
	EAttribute getFixture_Type();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Fixture#getHeat <em>Heat</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Heat</em>'.
	 * @see wainscribe.model.Fixture#getHeat()
	 * @see #getFixture()
	 * @generated
	 */
	EAttribute getFixture_Heat();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Fixture#getTankGap <em>Tank Gap</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Tank Gap</em>'.
	 * @see wainscribe.model.Fixture#getTankGap()
	 * @see #getFixture()
	 * @generated
	 */
	EAttribute getFixture_TankGap();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Fixture#getTankTop <em>Tank Top</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Tank Top</em>'.
	 * @see wainscribe.model.Fixture#getTankTop()
	 * @see #getFixture()
	 * @generated
	 */
	EAttribute getFixture_TankTop();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Fixture#getWetEdge <em>Wet Edge</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Wet Edge</em>'.
	 * @see wainscribe.model.Fixture#getWetEdge()
	 * @see #getFixture()
	 * @generated
	 */
	EAttribute getFixture_WetEdge();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Fixture#getBehind <em>Behind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Behind</em>'.
	 * @see wainscribe.model.Fixture#getBehind()
	 * @see #getFixture()
	 * @generated
	 */
	EAttribute getFixture_Behind();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Fixture#getSupport <em>Support</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Support</em>'.
	 * @see wainscribe.model.Fixture#getSupport()
	 * @see #getFixture()
	 * @generated
	 */
	EAttribute getFixture_Support();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Fixture#getFixing <em>Fixing</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Fixing</em>'.
	 * @see wainscribe.model.Fixture#getFixing()
	 * @see #getFixture()
	 * @generated
	 */
	EAttribute getFixture_Fixing();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Fixture#getMass <em>Mass</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Mass</em>'.
	 * @see wainscribe.model.Fixture#getMass()
	 * @see #getFixture()
	 * @generated
	 */
	EAttribute getFixture_Mass();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Fixture#getLoad <em>Load</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Load</em>'.
	 * @see wainscribe.model.Fixture#getLoad()
	 * @see #getFixture()
	 * @generated
	 */
	EAttribute getFixture_Load();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Fixture#getGap <em>Gap</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Gap</em>'.
	 * @see wainscribe.model.Fixture#getGap()
	 * @see #getFixture()
	 * @generated
	 */
	EAttribute getFixture_Gap();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Fixture#getOpeningX <em>Opening X</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Opening X</em>'.
	 * @see wainscribe.model.Fixture#getOpeningX()
	 * @see #getFixture()
	 * @generated
	 */
	EAttribute getFixture_OpeningX();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Fixture#getOpeningWidth <em>Opening Width</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Opening Width</em>'.
	 * @see wainscribe.model.Fixture#getOpeningWidth()
	 * @see #getFixture()
	 * @generated
	 */
	EAttribute getFixture_OpeningWidth();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Fixture#getOpeningHeight <em>Opening Height</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Opening Height</em>'.
	 * @see wainscribe.model.Fixture#getOpeningHeight()
	 * @see #getFixture()
	 * @generated
	 */
	EAttribute getFixture_OpeningHeight();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Fixture#getPlanned <em>Planned</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Planned</em>'.
	 * @see wainscribe.model.Fixture#getPlanned()
	 * @see #getFixture()
	 * @generated
	 */
	EAttribute getFixture_Planned();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Fixture#getFramed <em>Framed</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Framed</em>'.
	 * @see wainscribe.model.Fixture#getFramed()
	 * @see #getFixture()
	 * @generated
	 */
	EAttribute getFixture_Framed();

	/**
	 * Returns the meta object for class '{@link wainscribe.model.Box <em>Box</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Box</em>'.
	 * @see wainscribe.model.Box
	 * @generated
	 */
	EClass getBox();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Box#getType <em>Type</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Type</em>'.
	 * @see wainscribe.model.Box#getType()
	 * @see #getBox()
	 * @generated
	 */
	EAttribute getBox_Type();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Box#getGang <em>Gang</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Gang</em>'.
	 * @see wainscribe.model.Box#getGang()
	 * @see #getBox()
	 * @generated
	 */
	EAttribute getBox_Gang();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Box#getGfci <em>Gfci</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Gfci</em>'.
	 * @see wainscribe.model.Box#getGfci()
	 * @see #getBox()
	 * @generated
	 */
	EAttribute getBox_Gfci();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Box#getShaver <em>Shaver</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Shaver</em>'.
	 * @see wainscribe.model.Box#getShaver()
	 * @see #getBox()
	 * @generated
	 */
	EAttribute getBox_Shaver();

	/**
	 * Returns the meta object for class '{@link wainscribe.model.ExistingTrim <em>Existing Trim</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Existing Trim</em>'.
	 * @see wainscribe.model.ExistingTrim
	 * @generated
	 */
	EClass getExistingTrim();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.ExistingTrim#getType <em>Type</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Type</em>'.
	 * @see wainscribe.model.ExistingTrim#getType()
	 * @see #getExistingTrim()
	 * @generated
	 */
	EAttribute getExistingTrim_Type();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.ExistingTrim#getKeep <em>Keep</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Keep</em>'.
	 * @see wainscribe.model.ExistingTrim#getKeep()
	 * @see #getExistingTrim()
	 * @generated
	 */
	EAttribute getExistingTrim_Keep();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.ExistingTrim#getRaked <em>Raked</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Raked</em>'.
	 * @see wainscribe.model.ExistingTrim#getRaked()
	 * @see #getExistingTrim()
	 * @generated
	 */
	EAttribute getExistingTrim_Raked();

	/**
	 * Returns the meta object for class '{@link wainscribe.model.Service <em>Service</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Service</em>'.
	 * @see wainscribe.model.Service
	 * @generated
	 */
	EClass getService();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Service#getKind <em>Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Kind</em>'.
	 * @see wainscribe.model.Service#getKind()
	 * @see #getService()
	 * @generated
	 */
	EAttribute getService_Kind();

	/**
	 * Returns the meta object for class '{@link wainscribe.model.PlacedFrame <em>Placed Frame</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Placed Frame</em>'.
	 * @see wainscribe.model.PlacedFrame
	 * @generated
	 */
	EClass getPlacedFrame();

	/**
	 * Returns the meta object for class '{@link wainscribe.model.ReferenceLine <em>Reference Line</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Reference Line</em>'.
	 * @see wainscribe.model.ReferenceLine
	 * @generated
	 */
	EClass getReferenceLine();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.ReferenceLine#getAt <em>At</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>At</em>'.
	 * @see wainscribe.model.ReferenceLine#getAt()
	 * @see #getReferenceLine()
	 * @generated
	 */
	EAttribute getReferenceLine_At();

	/**
	 * Returns the meta object for class '{@link wainscribe.model.Axis <em>Axis</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Axis</em>'.
	 * @see wainscribe.model.Axis
	 * @generated
	 */
	EClass getAxis();

	/**
	 * Returns the meta object for class '{@link wainscribe.model.Guide <em>Guide</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Guide</em>'.
	 * @see wainscribe.model.Guide
	 * @generated
	 */
	EClass getGuide();

	/**
	 * Returns the meta object for class '{@link wainscribe.model.SurfaceZone <em>Surface Zone</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Surface Zone</em>'.
	 * @see wainscribe.model.SurfaceZone
	 * @generated
	 */
	EClass getSurfaceZone();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.SurfaceZone#getSurface <em>Surface</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Surface</em>'.
	 * @see wainscribe.model.SurfaceZone#getSurface()
	 * @see #getSurfaceZone()
	 * @generated
	 */
	EAttribute getSurfaceZone_Surface();

	/**
	 * Returns the meta object for the attribute list '{@link wainscribe.model.SurfaceZone#getWalls <em>Walls</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute list '<em>Walls</em>'.
	 * @see wainscribe.model.SurfaceZone#getWalls()
	 * @see #getSurfaceZone()
	 * @generated
	 */
	EAttribute getSurfaceZone_Walls();

	/**
	 * Returns the meta object for class '{@link wainscribe.model.Finish <em>Finish</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Finish</em>'.
	 * @see wainscribe.model.Finish
	 * @generated
	 */
	EClass getFinish();

	/**
	 * Returns the meta object for the containment reference '{@link wainscribe.model.Finish#getZone <em>Zone</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Zone</em>'.
	 * @see wainscribe.model.Finish#getZone()
	 * @see #getFinish()
	 * @generated
	 */
	EReference getFinish_Zone();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Finish#getGloss <em>Gloss</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Gloss</em>'.
	 * @see wainscribe.model.Finish#getGloss()
	 * @see #getFinish()
	 * @generated
	 */
	EAttribute getFinish_Gloss();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Finish#getBinder <em>Binder</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Binder</em>'.
	 * @see wainscribe.model.Finish#getBinder()
	 * @see #getFinish()
	 * @generated
	 */
	EAttribute getFinish_Binder();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Finish#getSubstrate <em>Substrate</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Substrate</em>'.
	 * @see wainscribe.model.Finish#getSubstrate()
	 * @see #getFinish()
	 * @generated
	 */
	EAttribute getFinish_Substrate();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Finish#getSound <em>Sound</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Sound</em>'.
	 * @see wainscribe.model.Finish#getSound()
	 * @see #getFinish()
	 * @generated
	 */
	EAttribute getFinish_Sound();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Finish#getTexture <em>Texture</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Texture</em>'.
	 * @see wainscribe.model.Finish#getTexture()
	 * @see #getFinish()
	 * @generated
	 */
	EAttribute getFinish_Texture();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Finish#getDisturb <em>Disturb</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Disturb</em>'.
	 * @see wainscribe.model.Finish#getDisturb()
	 * @see #getFinish()
	 * @generated
	 */
	EAttribute getFinish_Disturb();

	/**
	 * Returns the meta object for class '{@link wainscribe.model.Paint <em>Paint</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Paint</em>'.
	 * @see wainscribe.model.Paint
	 * @generated
	 */
	EClass getPaint();

	/**
	 * Returns the meta object for the containment reference '{@link wainscribe.model.Paint#getZone <em>Zone</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Zone</em>'.
	 * @see wainscribe.model.Paint#getZone()
	 * @see #getPaint()
	 * @generated
	 */
	EReference getPaint_Zone();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Paint#getColour <em>Colour</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Colour</em>'.
	 * @see wainscribe.model.Paint#getColour()
	 * @see #getPaint()
	 * @generated
	 */
	EAttribute getPaint_Colour();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Paint#getGloss <em>Gloss</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Gloss</em>'.
	 * @see wainscribe.model.Paint#getGloss()
	 * @see #getPaint()
	 * @generated
	 */
	EAttribute getPaint_Gloss();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Paint#getBinder <em>Binder</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Binder</em>'.
	 * @see wainscribe.model.Paint#getBinder()
	 * @see #getPaint()
	 * @generated
	 */
	EAttribute getPaint_Binder();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Paint#getScrub <em>Scrub</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Scrub</em>'.
	 * @see wainscribe.model.Paint#getScrub()
	 * @see #getPaint()
	 * @generated
	 */
	EAttribute getPaint_Scrub();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Paint#getMildew <em>Mildew</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Mildew</em>'.
	 * @see wainscribe.model.Paint#getMildew()
	 * @see #getPaint()
	 * @generated
	 */
	EAttribute getPaint_Mildew();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Paint#getCoats <em>Coats</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Coats</em>'.
	 * @see wainscribe.model.Paint#getCoats()
	 * @see #getPaint()
	 * @generated
	 */
	EAttribute getPaint_Coats();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Paint#getClean <em>Clean</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Clean</em>'.
	 * @see wainscribe.model.Paint#getClean()
	 * @see #getPaint()
	 * @generated
	 */
	EAttribute getPaint_Clean();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Paint#getDegloss <em>Degloss</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Degloss</em>'.
	 * @see wainscribe.model.Paint#getDegloss()
	 * @see #getPaint()
	 * @generated
	 */
	EAttribute getPaint_Degloss();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Paint#getPrimer <em>Primer</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Primer</em>'.
	 * @see wainscribe.model.Paint#getPrimer()
	 * @see #getPaint()
	 * @generated
	 */
	EAttribute getPaint_Primer();

	/**
	 * Returns the meta object for class '{@link wainscribe.model.ProfileReference <em>Profile Reference</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Profile Reference</em>'.
	 * @see wainscribe.model.ProfileReference
	 * @generated
	 */
	EClass getProfileReference();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.ProfileReference#getUse <em>Use</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Use</em>'.
	 * @see wainscribe.model.ProfileReference#getUse()
	 * @see #getProfileReference()
	 * @generated
	 */
	EAttribute getProfileReference_Use();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.ProfileReference#getProfile <em>Profile</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Profile</em>'.
	 * @see wainscribe.model.ProfileReference#getProfile()
	 * @see #getProfileReference()
	 * @generated
	 */
	EAttribute getProfileReference_Profile();

	/**
	 * Returns the meta object for class '{@link wainscribe.model.Brief <em>Brief</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Brief</em>'.
	 * @see wainscribe.model.Brief
	 * @generated
	 */
	EClass getBrief();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Brief#getPattern <em>Pattern</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Pattern</em>'.
	 * @see wainscribe.model.Brief#getPattern()
	 * @see #getBrief()
	 * @generated
	 */
	EAttribute getBrief_Pattern();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Brief#getRail <em>Rail</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Rail</em>'.
	 * @see wainscribe.model.Brief#getRail()
	 * @see #getBrief()
	 * @generated
	 */
	EAttribute getBrief_Rail();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Brief#getRailFace <em>Rail Face</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Rail Face</em>'.
	 * @see wainscribe.model.Brief#getRailFace()
	 * @see #getBrief()
	 * @generated
	 */
	EAttribute getBrief_RailFace();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Brief#getRailThickness <em>Rail Thickness</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Rail Thickness</em>'.
	 * @see wainscribe.model.Brief#getRailThickness()
	 * @see #getBrief()
	 * @generated
	 */
	EAttribute getBrief_RailThickness();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Brief#getGap <em>Gap</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Gap</em>'.
	 * @see wainscribe.model.Brief#getGap()
	 * @see #getBrief()
	 * @generated
	 */
	EAttribute getBrief_Gap();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Brief#getGapY <em>Gap Y</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Gap Y</em>'.
	 * @see wainscribe.model.Brief#getGapY()
	 * @see #getBrief()
	 * @generated
	 */
	EAttribute getBrief_GapY();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Brief#getFace <em>Face</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Face</em>'.
	 * @see wainscribe.model.Brief#getFace()
	 * @see #getBrief()
	 * @generated
	 */
	EAttribute getBrief_Face();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Brief#getThickness <em>Thickness</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Thickness</em>'.
	 * @see wainscribe.model.Brief#getThickness()
	 * @see #getBrief()
	 * @generated
	 */
	EAttribute getBrief_Thickness();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Brief#getFrameWidthMin <em>Frame Width Min</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Frame Width Min</em>'.
	 * @see wainscribe.model.Brief#getFrameWidthMin()
	 * @see #getBrief()
	 * @generated
	 */
	EAttribute getBrief_FrameWidthMin();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Brief#getFrameWidthMax <em>Frame Width Max</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Frame Width Max</em>'.
	 * @see wainscribe.model.Brief#getFrameWidthMax()
	 * @see #getBrief()
	 * @generated
	 */
	EAttribute getBrief_FrameWidthMax();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Brief#getBase <em>Base</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Base</em>'.
	 * @see wainscribe.model.Brief#getBase()
	 * @see #getBrief()
	 * @generated
	 */
	EAttribute getBrief_Base();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Brief#getCrown <em>Crown</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Crown</em>'.
	 * @see wainscribe.model.Brief#getCrown()
	 * @see #getBrief()
	 * @generated
	 */
	EAttribute getBrief_Crown();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Brief#getMaterial <em>Material</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Material</em>'.
	 * @see wainscribe.model.Brief#getMaterial()
	 * @see #getBrief()
	 * @generated
	 */
	EAttribute getBrief_Material();

	/**
	 * Returns the meta object for the attribute list '{@link wainscribe.model.Brief#getStock <em>Stock</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute list '<em>Stock</em>'.
	 * @see wainscribe.model.Brief#getStock()
	 * @see #getBrief()
	 * @generated
	 */
	EAttribute getBrief_Stock();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Brief#getNail <em>Nail</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Nail</em>'.
	 * @see wainscribe.model.Brief#getNail()
	 * @see #getBrief()
	 * @generated
	 */
	EAttribute getBrief_Nail();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Brief#getBoard <em>Board</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Board</em>'.
	 * @see wainscribe.model.Brief#getBoard()
	 * @see #getBrief()
	 * @generated
	 */
	EAttribute getBrief_Board();

	/**
	 * Returns the meta object for the attribute list '{@link wainscribe.model.Brief#getBoardWalls <em>Board Walls</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute list '<em>Board Walls</em>'.
	 * @see wainscribe.model.Brief#getBoardWalls()
	 * @see #getBrief()
	 * @generated
	 */
	EAttribute getBrief_BoardWalls();

	/**
	 * Returns the meta object for the containment reference list '{@link wainscribe.model.Brief#getProfiles <em>Profiles</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Profiles</em>'.
	 * @see wainscribe.model.Brief#getProfiles()
	 * @see #getBrief()
	 * @generated
	 */
	EReference getBrief_Profiles();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Brief#getInside <em>Inside</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Inside</em>'.
	 * @see wainscribe.model.Brief#getInside()
	 * @see #getBrief()
	 * @generated
	 */
	EAttribute getBrief_Inside();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Brief#getBaseAtCasing <em>Base At Casing</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Base At Casing</em>'.
	 * @see wainscribe.model.Brief#getBaseAtCasing()
	 * @see #getBrief()
	 * @generated
	 */
	EAttribute getBrief_BaseAtCasing();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Brief#getSaw <em>Saw</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Saw</em>'.
	 * @see wainscribe.model.Brief#getSaw()
	 * @see #getBrief()
	 * @generated
	 */
	EAttribute getBrief_Saw();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Brief#getGlassLap <em>Glass Lap</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Glass Lap</em>'.
	 * @see wainscribe.model.Brief#getGlassLap()
	 * @see #getBrief()
	 * @generated
	 */
	EAttribute getBrief_GlassLap();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Brief#getGlassClearance <em>Glass Clearance</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Glass Clearance</em>'.
	 * @see wainscribe.model.Brief#getGlassClearance()
	 * @see #getBrief()
	 * @generated
	 */
	EAttribute getBrief_GlassClearance();

	/**
	 * Returns the meta object for class '{@link wainscribe.model.Price <em>Price</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Price</em>'.
	 * @see wainscribe.model.Price
	 * @generated
	 */
	EClass getPrice();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Price#getItem <em>Item</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Item</em>'.
	 * @see wainscribe.model.Price#getItem()
	 * @see #getPrice()
	 * @generated
	 */
	EAttribute getPrice_Item();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Price#getUnit <em>Unit</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Unit</em>'.
	 * @see wainscribe.model.Price#getUnit()
	 * @see #getPrice()
	 * @generated
	 */
	EAttribute getPrice_Unit();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Price#getPackLength <em>Pack Length</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Pack Length</em>'.
	 * @see wainscribe.model.Price#getPackLength()
	 * @see #getPrice()
	 * @generated
	 */
	EAttribute getPrice_PackLength();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Price#getPack <em>Pack</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Pack</em>'.
	 * @see wainscribe.model.Price#getPack()
	 * @see #getPrice()
	 * @generated
	 */
	EAttribute getPrice_Pack();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.Price#getAmount <em>Amount</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Amount</em>'.
	 * @see wainscribe.model.Price#getAmount()
	 * @see #getPrice()
	 * @generated
	 */
	EAttribute getPrice_Amount();

	/**
	 * Returns the meta object for class '{@link wainscribe.model.StoredOffcut <em>Stored Offcut</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Stored Offcut</em>'.
	 * @see wainscribe.model.StoredOffcut
	 * @generated
	 */
	EClass getStoredOffcut();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.StoredOffcut#getProfile <em>Profile</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Profile</em>'.
	 * @see wainscribe.model.StoredOffcut#getProfile()
	 * @see #getStoredOffcut()
	 * @generated
	 */
	EAttribute getStoredOffcut_Profile();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.StoredOffcut#getMaterial <em>Material</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Material</em>'.
	 * @see wainscribe.model.StoredOffcut#getMaterial()
	 * @see #getStoredOffcut()
	 * @generated
	 */
	EAttribute getStoredOffcut_Material();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.StoredOffcut#getLength <em>Length</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Length</em>'.
	 * @see wainscribe.model.StoredOffcut#getLength()
	 * @see #getStoredOffcut()
	 * @generated
	 */
	EAttribute getStoredOffcut_Length();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.StoredOffcut#getOrigin <em>Origin</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Origin</em>'.
	 * @see wainscribe.model.StoredOffcut#getOrigin()
	 * @see #getStoredOffcut()
	 * @generated
	 */
	EAttribute getStoredOffcut_Origin();

	/**
	 * Returns the meta object for class '{@link wainscribe.model.CutBar <em>Cut Bar</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Cut Bar</em>'.
	 * @see wainscribe.model.CutBar
	 * @generated
	 */
	EClass getCutBar();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.CutBar#getProfile <em>Profile</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Profile</em>'.
	 * @see wainscribe.model.CutBar#getProfile()
	 * @see #getCutBar()
	 * @generated
	 */
	EAttribute getCutBar_Profile();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.CutBar#getMaterial <em>Material</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Material</em>'.
	 * @see wainscribe.model.CutBar#getMaterial()
	 * @see #getCutBar()
	 * @generated
	 */
	EAttribute getCutBar_Material();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.CutBar#getLength <em>Length</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Length</em>'.
	 * @see wainscribe.model.CutBar#getLength()
	 * @see #getCutBar()
	 * @generated
	 */
	EAttribute getCutBar_Length();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.CutBar#getPrice <em>Price</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Price</em>'.
	 * @see wainscribe.model.CutBar#getPrice()
	 * @see #getCutBar()
	 * @generated
	 */
	EAttribute getCutBar_Price();

	/**
	 * Returns the meta object for the containment reference list '{@link wainscribe.model.CutBar#getPieces <em>Pieces</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Pieces</em>'.
	 * @see wainscribe.model.CutBar#getPieces()
	 * @see #getCutBar()
	 * @generated
	 */
	EReference getCutBar_Pieces();

	/**
	 * Returns the meta object for class '{@link wainscribe.model.CutPiece <em>Cut Piece</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Cut Piece</em>'.
	 * @see wainscribe.model.CutPiece
	 * @generated
	 */
	EClass getCutPiece();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.CutPiece#getRoom <em>Room</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Room</em>'.
	 * @see wainscribe.model.CutPiece#getRoom()
	 * @see #getCutPiece()
	 * @generated
	 */
	EAttribute getCutPiece_Room();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.CutPiece#getLabel <em>Label</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Label</em>'.
	 * @see wainscribe.model.CutPiece#getLabel()
	 * @see #getCutPiece()
	 * @generated
	 */
	EAttribute getCutPiece_Label();

	/**
	 * Returns the meta object for the attribute '{@link wainscribe.model.CutPiece#getLength <em>Length</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Length</em>'.
	 * @see wainscribe.model.CutPiece#getLength()
	 * @see #getCutPiece()
	 * @generated
	 */
	EAttribute getCutPiece_Length();

	/**
	 * Returns the meta object for enum '{@link wainscribe.model.RoomUse <em>Room Use</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Room Use</em>'.
	 * @see wainscribe.model.RoomUse
	 * @generated
	 */
	EEnum getRoomUse();

	/**
	 * Returns the meta object for enum '{@link wainscribe.model.FanOutlet <em>Fan Outlet</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Fan Outlet</em>'.
	 * @see wainscribe.model.FanOutlet
	 * @generated
	 */
	EEnum getFanOutlet();

	/**
	 * Returns the meta object for enum '{@link wainscribe.model.FanMode <em>Fan Mode</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Fan Mode</em>'.
	 * @see wainscribe.model.FanMode
	 * @generated
	 */
	EEnum getFanMode();

	/**
	 * Returns the meta object for enum '{@link wainscribe.model.OpeningKind <em>Opening Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Opening Kind</em>'.
	 * @see wainscribe.model.OpeningKind
	 * @generated
	 */
	EEnum getOpeningKind();

	/**
	 * Returns the meta object for enum '{@link wainscribe.model.Swing <em>Swing</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Swing</em>'.
	 * @see wainscribe.model.Swing
	 * @generated
	 */
	EEnum getSwing();

	/**
	 * Returns the meta object for enum '{@link wainscribe.model.Glazing <em>Glazing</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Glazing</em>'.
	 * @see wainscribe.model.Glazing
	 * @generated
	 */
	EEnum getGlazing();

	/**
	 * Returns the meta object for enum '{@link wainscribe.model.BoxType <em>Box Type</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Box Type</em>'.
	 * @see wainscribe.model.BoxType
	 * @generated
	 */
	EEnum getBoxType();

	/**
	 * Returns the meta object for enum '{@link wainscribe.model.FixtureType <em>Fixture Type</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Fixture Type</em>'.
	 * @see wainscribe.model.FixtureType
	 * @generated
	 */
	EEnum getFixtureType();

	/**
	 * Returns the meta object for enum '{@link wainscribe.model.HeatSource <em>Heat Source</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Heat Source</em>'.
	 * @see wainscribe.model.HeatSource
	 * @generated
	 */
	EEnum getHeatSource();

	/**
	 * Returns the meta object for enum '{@link wainscribe.model.Support <em>Support</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Support</em>'.
	 * @see wainscribe.model.Support
	 * @generated
	 */
	EEnum getSupport();

	/**
	 * Returns the meta object for enum '{@link wainscribe.model.Fixing <em>Fixing</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Fixing</em>'.
	 * @see wainscribe.model.Fixing
	 * @generated
	 */
	EEnum getFixing();

	/**
	 * Returns the meta object for enum '{@link wainscribe.model.TrimType <em>Trim Type</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Trim Type</em>'.
	 * @see wainscribe.model.TrimType
	 * @generated
	 */
	EEnum getTrimType();

	/**
	 * Returns the meta object for enum '{@link wainscribe.model.ServiceKind <em>Service Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Service Kind</em>'.
	 * @see wainscribe.model.ServiceKind
	 * @generated
	 */
	EEnum getServiceKind();

	/**
	 * Returns the meta object for enum '{@link wainscribe.model.Surface <em>Surface</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Surface</em>'.
	 * @see wainscribe.model.Surface
	 * @generated
	 */
	EEnum getSurface();

	/**
	 * Returns the meta object for enum '{@link wainscribe.model.GlossLevel <em>Gloss Level</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Gloss Level</em>'.
	 * @see wainscribe.model.GlossLevel
	 * @generated
	 */
	EEnum getGlossLevel();

	/**
	 * Returns the meta object for enum '{@link wainscribe.model.Binder <em>Binder</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Binder</em>'.
	 * @see wainscribe.model.Binder
	 * @generated
	 */
	EEnum getBinder();

	/**
	 * Returns the meta object for enum '{@link wainscribe.model.Substrate <em>Substrate</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Substrate</em>'.
	 * @see wainscribe.model.Substrate
	 * @generated
	 */
	EEnum getSubstrate();

	/**
	 * Returns the meta object for enum '{@link wainscribe.model.Soundness <em>Soundness</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Soundness</em>'.
	 * @see wainscribe.model.Soundness
	 * @generated
	 */
	EEnum getSoundness();

	/**
	 * Returns the meta object for enum '{@link wainscribe.model.Primer <em>Primer</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Primer</em>'.
	 * @see wainscribe.model.Primer
	 * @generated
	 */
	EEnum getPrimer();

	/**
	 * Returns the meta object for enum '{@link wainscribe.model.Material <em>Material</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Material</em>'.
	 * @see wainscribe.model.Material
	 * @generated
	 */
	EEnum getMaterial();

	/**
	 * Returns the meta object for enum '{@link wainscribe.model.InsideJoint <em>Inside Joint</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Inside Joint</em>'.
	 * @see wainscribe.model.InsideJoint
	 * @generated
	 */
	EEnum getInsideJoint();

	/**
	 * Returns the meta object for enum '{@link wainscribe.model.CasingJoint <em>Casing Joint</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Casing Joint</em>'.
	 * @see wainscribe.model.CasingJoint
	 * @generated
	 */
	EEnum getCasingJoint();

	/**
	 * Returns the meta object for enum '{@link wainscribe.model.SawScale <em>Saw Scale</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Saw Scale</em>'.
	 * @see wainscribe.model.SawScale
	 * @generated
	 */
	EEnum getSawScale();

	/**
	 * Returns the meta object for enum '{@link wainscribe.model.ProfileUse <em>Profile Use</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Profile Use</em>'.
	 * @see wainscribe.model.ProfileUse
	 * @generated
	 */
	EEnum getProfileUse();

	/**
	 * Returns the meta object for enum '{@link wainscribe.model.PriceUnit <em>Price Unit</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Price Unit</em>'.
	 * @see wainscribe.model.PriceUnit
	 * @generated
	 */
	EEnum getPriceUnit();

	/**
	 * Returns the meta object for data type '{@link wainscribe.model.length.Length <em>Length</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * An exact length in units of 1/8000 mm, written as people write it: 72 1/2" or 1842 mm. Null: not measured or not decided.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Length</em>'.
	 * @see wainscribe.model.length.Length
	 * @model instanceClass="wainscribe.model.length.Length"
	 * @generated
	 */
	EDataType getLength();

	/**
	 * Returns the meta object for data type '{@link wainscribe.model.length.LengthUnit <em>Length Unit</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * The unit in which a home is measured and drawn: in or mm.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Length Unit</em>'.
	 * @see wainscribe.model.length.LengthUnit
	 * @model instanceClass="wainscribe.model.length.LengthUnit"
	 * @generated
	 */
	EDataType getLengthUnit();

	/**
	 * Returns the meta object for data type '{@link wainscribe.model.measure.Measure <em>Measure</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * An amount in the unit it was written in: 20C, 50%, 80cfm, 12kg. Null: not measured.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Measure</em>'.
	 * @see wainscribe.model.measure.Measure
	 * @model instanceClass="wainscribe.model.measure.Measure"
	 * @generated
	 */
	EDataType getMeasure();

	/**
	 * Returns the factory that creates the instances of the model.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the factory that creates the instances of the model.
	 * @generated
	 */
	WainscribeFactory getWainscribeFactory();

	/**
	 * <!-- begin-user-doc -->
	 * Defines literals for the meta objects that represent
	 * <ul>
	 *   <li>each class,</li>
	 *   <li>each feature of each class,</li>
	 *   <li>each operation of each class,</li>
	 *   <li>each enum,</li>
	 *   <li>and each data type</li>
	 * </ul>
	 * <!-- end-user-doc -->
	 * @generated
	 */
	interface Literals {
		/**
		 * The meta object literal for the '{@link wainscribe.model.impl.ElementImpl <em>Element</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see wainscribe.model.impl.ElementImpl
		 * @see wainscribe.model.impl.WainscribePackageImpl#getElement()
		 * @generated
		 */
		EClass ELEMENT = eINSTANCE.getElement();

		/**
		 * The meta object literal for the '<em><b>Id</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ELEMENT__ID = eINSTANCE.getElement_Id();

		/**
		 * The meta object literal for the '<em><b>Name</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ELEMENT__NAME = eINSTANCE.getElement_Name();

		/**
		 * The meta object literal for the '<em><b>Notes</b></em>' attribute list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ELEMENT__NOTES = eINSTANCE.getElement_Notes();

		/**
		 * The meta object literal for the '{@link wainscribe.model.impl.HomeImpl <em>Home</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see wainscribe.model.impl.HomeImpl
		 * @see wainscribe.model.impl.WainscribePackageImpl#getHome()
		 * @generated
		 */
		EClass HOME = eINSTANCE.getHome();

		/**
		 * The meta object literal for the '<em><b>Format Version</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute HOME__FORMAT_VERSION = eINSTANCE.getHome_FormatVersion();

		/**
		 * The meta object literal for the '<em><b>Units</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute HOME__UNITS = eINSTANCE.getHome_Units();

		/**
		 * The meta object literal for the '<em><b>Country</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute HOME__COUNTRY = eINSTANCE.getHome_Country();

		/**
		 * The meta object literal for the '<em><b>Built</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute HOME__BUILT = eINSTANCE.getHome_Built();

		/**
		 * The meta object literal for the '<em><b>Currency</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute HOME__CURRENCY = eINSTANCE.getHome_Currency();

		/**
		 * The meta object literal for the '<em><b>Tax</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute HOME__TAX = eINSTANCE.getHome_Tax();

		/**
		 * The meta object literal for the '<em><b>Room Order</b></em>' attribute list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute HOME__ROOM_ORDER = eINSTANCE.getHome_RoomOrder();

		/**
		 * The meta object literal for the '<em><b>Brief</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference HOME__BRIEF = eINSTANCE.getHome_Brief();

		/**
		 * The meta object literal for the '<em><b>Paints</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference HOME__PAINTS = eINSTANCE.getHome_Paints();

		/**
		 * The meta object literal for the '<em><b>Prices</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference HOME__PRICES = eINSTANCE.getHome_Prices();

		/**
		 * The meta object literal for the '<em><b>Kerf</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute HOME__KERF = eINSTANCE.getHome_Kerf();

		/**
		 * The meta object literal for the '<em><b>End Trim</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute HOME__END_TRIM = eINSTANCE.getHome_EndTrim();

		/**
		 * The meta object literal for the '<em><b>Shortest Offcut</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute HOME__SHORTEST_OFFCUT = eINSTANCE.getHome_ShortestOffcut();

		/**
		 * The meta object literal for the '<em><b>Offcuts</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference HOME__OFFCUTS = eINSTANCE.getHome_Offcuts();

		/**
		 * The meta object literal for the '<em><b>Cut Bars</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference HOME__CUT_BARS = eINSTANCE.getHome_CutBars();

		/**
		 * The meta object literal for the '{@link wainscribe.model.impl.RoomImpl <em>Room</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see wainscribe.model.impl.RoomImpl
		 * @see wainscribe.model.impl.WainscribePackageImpl#getRoom()
		 * @generated
		 */
		EClass ROOM = eINSTANCE.getRoom();

		/**
		 * The meta object literal for the '<em><b>Format Version</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ROOM__FORMAT_VERSION = eINSTANCE.getRoom_FormatVersion();

		/**
		 * The meta object literal for the '<em><b>Use</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ROOM__USE = eINSTANCE.getRoom_Use();

		/**
		 * The meta object literal for the '<em><b>Height</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ROOM__HEIGHT = eINSTANCE.getRoom_Height();

		/**
		 * The meta object literal for the '<em><b>Air</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ROOM__AIR = eINSTANCE.getRoom_Air();

		/**
		 * The meta object literal for the '<em><b>Humidity</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ROOM__HUMIDITY = eINSTANCE.getRoom_Humidity();

		/**
		 * The meta object literal for the '<em><b>Surface Temperature</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ROOM__SURFACE_TEMPERATURE = eINSTANCE.getRoom_SurfaceTemperature();

		/**
		 * The meta object literal for the '<em><b>Fan</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ROOM__FAN = eINSTANCE.getRoom_Fan();

		/**
		 * The meta object literal for the '<em><b>Fan Outlet</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ROOM__FAN_OUTLET = eINSTANCE.getRoom_FanOutlet();

		/**
		 * The meta object literal for the '<em><b>Fan Mode</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ROOM__FAN_MODE = eINSTANCE.getRoom_FanMode();

		/**
		 * The meta object literal for the '<em><b>Open</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ROOM__OPEN = eINSTANCE.getRoom_Open();

		/**
		 * The meta object literal for the '<em><b>Walls</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference ROOM__WALLS = eINSTANCE.getRoom_Walls();

		/**
		 * The meta object literal for the '<em><b>Diagonals</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference ROOM__DIAGONALS = eINSTANCE.getRoom_Diagonals();

		/**
		 * The meta object literal for the '<em><b>Finishes</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference ROOM__FINISHES = eINSTANCE.getRoom_Finishes();

		/**
		 * The meta object literal for the '<em><b>Brief</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference ROOM__BRIEF = eINSTANCE.getRoom_Brief();

		/**
		 * The meta object literal for the '<em><b>Paints</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference ROOM__PAINTS = eINSTANCE.getRoom_Paints();

		/**
		 * The meta object literal for the '<em><b>Guides</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference ROOM__GUIDES = eINSTANCE.getRoom_Guides();

		/**
		 * The meta object literal for the '{@link wainscribe.model.impl.WallImpl <em>Wall</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see wainscribe.model.impl.WallImpl
		 * @see wainscribe.model.impl.WainscribePackageImpl#getWall()
		 * @generated
		 */
		EClass WALL = eINSTANCE.getWall();

		/**
		 * The meta object literal for the '<em><b>Room</b></em>' container reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference WALL__ROOM = eINSTANCE.getWall_Room();

		/**
		 * The meta object literal for the '<em><b>Length</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WALL__LENGTH = eINSTANCE.getWall_Length();

		/**
		 * The meta object literal for the '<em><b>Height</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WALL__HEIGHT = eINSTANCE.getWall_Height();

		/**
		 * The meta object literal for the '<em><b>Height Right</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WALL__HEIGHT_RIGHT = eINSTANCE.getWall_HeightRight();

		/**
		 * The meta object literal for the '<em><b>Floor Right</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WALL__FLOOR_RIGHT = eINSTANCE.getWall_FloorRight();

		/**
		 * The meta object literal for the '<em><b>Angle</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WALL__ANGLE = eINSTANCE.getWall_Angle();

		/**
		 * The meta object literal for the '<em><b>Bow</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WALL__BOW = eINSTANCE.getWall_Bow();

		/**
		 * The meta object literal for the '<em><b>Plumbing</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WALL__PLUMBING = eINSTANCE.getWall_Plumbing();

		/**
		 * The meta object literal for the '<em><b>Rated</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WALL__RATED = eINSTANCE.getWall_Rated();

		/**
		 * The meta object literal for the '<em><b>Wallboard</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WALL__WALLBOARD = eINSTANCE.getWall_Wallboard();

		/**
		 * The meta object literal for the '<em><b>Stud Spacing</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WALL__STUD_SPACING = eINSTANCE.getWall_StudSpacing();

		/**
		 * The meta object literal for the '<em><b>Stud Spacing Unknown</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WALL__STUD_SPACING_UNKNOWN = eINSTANCE.getWall_StudSpacingUnknown();

		/**
		 * The meta object literal for the '<em><b>Corner</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference WALL__CORNER = eINSTANCE.getWall_Corner();

		/**
		 * The meta object literal for the '<em><b>Openings</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference WALL__OPENINGS = eINSTANCE.getWall_Openings();

		/**
		 * The meta object literal for the '<em><b>Fixtures</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference WALL__FIXTURES = eINSTANCE.getWall_Fixtures();

		/**
		 * The meta object literal for the '<em><b>Boxes</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference WALL__BOXES = eINSTANCE.getWall_Boxes();

		/**
		 * The meta object literal for the '<em><b>Trims</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference WALL__TRIMS = eINSTANCE.getWall_Trims();

		/**
		 * The meta object literal for the '<em><b>Services</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference WALL__SERVICES = eINSTANCE.getWall_Services();

		/**
		 * The meta object literal for the '<em><b>Placed Frames</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference WALL__PLACED_FRAMES = eINSTANCE.getWall_PlacedFrames();

		/**
		 * The meta object literal for the '<em><b>Axes</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference WALL__AXES = eINSTANCE.getWall_Axes();

		/**
		 * The meta object literal for the '<em><b>Guides</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference WALL__GUIDES = eINSTANCE.getWall_Guides();

		/**
		 * The meta object literal for the '{@link wainscribe.model.impl.CornerImpl <em>Corner</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see wainscribe.model.impl.CornerImpl
		 * @see wainscribe.model.impl.WainscribePackageImpl#getCorner()
		 * @generated
		 */
		EClass CORNER = eINSTANCE.getCorner();

		/**
		 * The meta object literal for the '<em><b>Leg This</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CORNER__LEG_THIS = eINSTANCE.getCorner_LegThis();

		/**
		 * The meta object literal for the '<em><b>Leg Next</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CORNER__LEG_NEXT = eINSTANCE.getCorner_LegNext();

		/**
		 * The meta object literal for the '<em><b>Diagonal</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CORNER__DIAGONAL = eINSTANCE.getCorner_Diagonal();

		/**
		 * The meta object literal for the '{@link wainscribe.model.impl.DiagonalImpl <em>Diagonal</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see wainscribe.model.impl.DiagonalImpl
		 * @see wainscribe.model.impl.WainscribePackageImpl#getDiagonal()
		 * @generated
		 */
		EClass DIAGONAL = eINSTANCE.getDiagonal();

		/**
		 * The meta object literal for the '<em><b>From</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference DIAGONAL__FROM = eINSTANCE.getDiagonal_From();

		/**
		 * The meta object literal for the '<em><b>To</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference DIAGONAL__TO = eINSTANCE.getDiagonal_To();

		/**
		 * The meta object literal for the '<em><b>Distance</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DIAGONAL__DISTANCE = eINSTANCE.getDiagonal_Distance();

		/**
		 * The meta object literal for the '{@link wainscribe.model.impl.PlacedImpl <em>Placed</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see wainscribe.model.impl.PlacedImpl
		 * @see wainscribe.model.impl.WainscribePackageImpl#getPlaced()
		 * @generated
		 */
		EClass PLACED = eINSTANCE.getPlaced();

		/**
		 * The meta object literal for the '<em><b>X</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PLACED__X = eINSTANCE.getPlaced_X();

		/**
		 * The meta object literal for the '<em><b>Y</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PLACED__Y = eINSTANCE.getPlaced_Y();

		/**
		 * The meta object literal for the '<em><b>Width</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PLACED__WIDTH = eINSTANCE.getPlaced_Width();

		/**
		 * The meta object literal for the '<em><b>Height</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PLACED__HEIGHT = eINSTANCE.getPlaced_Height();

		/**
		 * The meta object literal for the '<em><b>Depth</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PLACED__DEPTH = eINSTANCE.getPlaced_Depth();

		/**
		 * The meta object literal for the '{@link wainscribe.model.impl.OpeningImpl <em>Opening</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see wainscribe.model.impl.OpeningImpl
		 * @see wainscribe.model.impl.WainscribePackageImpl#getOpening()
		 * @generated
		 */
		EClass OPENING = eINSTANCE.getOpening();

		/**
		 * The meta object literal for the '<em><b>Kind</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute OPENING__KIND = eINSTANCE.getOpening_Kind();

		/**
		 * The meta object literal for the '<em><b>Casing</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute OPENING__CASING = eINSTANCE.getOpening_Casing();

		/**
		 * The meta object literal for the '<em><b>Casing Depth</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute OPENING__CASING_DEPTH = eINSTANCE.getOpening_CasingDepth();

		/**
		 * The meta object literal for the '<em><b>Reveal</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute OPENING__REVEAL = eINSTANCE.getOpening_Reveal();

		/**
		 * The meta object literal for the '<em><b>Stool</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute OPENING__STOOL = eINSTANCE.getOpening_Stool();

		/**
		 * The meta object literal for the '<em><b>Apron</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute OPENING__APRON = eINSTANCE.getOpening_Apron();

		/**
		 * The meta object literal for the '<em><b>Swing</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute OPENING__SWING = eINSTANCE.getOpening_Swing();

		/**
		 * The meta object literal for the '<em><b>Egress</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute OPENING__EGRESS = eINSTANCE.getOpening_Egress();

		/**
		 * The meta object literal for the '<em><b>Glazing</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute OPENING__GLAZING = eINSTANCE.getOpening_Glazing();

		/**
		 * The meta object literal for the '{@link wainscribe.model.impl.FixtureImpl <em>Fixture</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see wainscribe.model.impl.FixtureImpl
		 * @see wainscribe.model.impl.WainscribePackageImpl#getFixture()
		 * @generated
		 */
		EClass FIXTURE = eINSTANCE.getFixture();

		/**
		 * The meta object literal for the '<em><b>Type</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FIXTURE__TYPE = eINSTANCE.getFixture_Type();

		/**
		 * The meta object literal for the '<em><b>Heat</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FIXTURE__HEAT = eINSTANCE.getFixture_Heat();

		/**
		 * The meta object literal for the '<em><b>Tank Gap</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FIXTURE__TANK_GAP = eINSTANCE.getFixture_TankGap();

		/**
		 * The meta object literal for the '<em><b>Tank Top</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FIXTURE__TANK_TOP = eINSTANCE.getFixture_TankTop();

		/**
		 * The meta object literal for the '<em><b>Wet Edge</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FIXTURE__WET_EDGE = eINSTANCE.getFixture_WetEdge();

		/**
		 * The meta object literal for the '<em><b>Behind</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FIXTURE__BEHIND = eINSTANCE.getFixture_Behind();

		/**
		 * The meta object literal for the '<em><b>Support</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FIXTURE__SUPPORT = eINSTANCE.getFixture_Support();

		/**
		 * The meta object literal for the '<em><b>Fixing</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FIXTURE__FIXING = eINSTANCE.getFixture_Fixing();

		/**
		 * The meta object literal for the '<em><b>Mass</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FIXTURE__MASS = eINSTANCE.getFixture_Mass();

		/**
		 * The meta object literal for the '<em><b>Load</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FIXTURE__LOAD = eINSTANCE.getFixture_Load();

		/**
		 * The meta object literal for the '<em><b>Gap</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FIXTURE__GAP = eINSTANCE.getFixture_Gap();

		/**
		 * The meta object literal for the '<em><b>Opening X</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FIXTURE__OPENING_X = eINSTANCE.getFixture_OpeningX();

		/**
		 * The meta object literal for the '<em><b>Opening Width</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FIXTURE__OPENING_WIDTH = eINSTANCE.getFixture_OpeningWidth();

		/**
		 * The meta object literal for the '<em><b>Opening Height</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FIXTURE__OPENING_HEIGHT = eINSTANCE.getFixture_OpeningHeight();

		/**
		 * The meta object literal for the '<em><b>Planned</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FIXTURE__PLANNED = eINSTANCE.getFixture_Planned();

		/**
		 * The meta object literal for the '<em><b>Framed</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FIXTURE__FRAMED = eINSTANCE.getFixture_Framed();

		/**
		 * The meta object literal for the '{@link wainscribe.model.impl.BoxImpl <em>Box</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see wainscribe.model.impl.BoxImpl
		 * @see wainscribe.model.impl.WainscribePackageImpl#getBox()
		 * @generated
		 */
		EClass BOX = eINSTANCE.getBox();

		/**
		 * The meta object literal for the '<em><b>Type</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BOX__TYPE = eINSTANCE.getBox_Type();

		/**
		 * The meta object literal for the '<em><b>Gang</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BOX__GANG = eINSTANCE.getBox_Gang();

		/**
		 * The meta object literal for the '<em><b>Gfci</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BOX__GFCI = eINSTANCE.getBox_Gfci();

		/**
		 * The meta object literal for the '<em><b>Shaver</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BOX__SHAVER = eINSTANCE.getBox_Shaver();

		/**
		 * The meta object literal for the '{@link wainscribe.model.impl.ExistingTrimImpl <em>Existing Trim</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see wainscribe.model.impl.ExistingTrimImpl
		 * @see wainscribe.model.impl.WainscribePackageImpl#getExistingTrim()
		 * @generated
		 */
		EClass EXISTING_TRIM = eINSTANCE.getExistingTrim();

		/**
		 * The meta object literal for the '<em><b>Type</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute EXISTING_TRIM__TYPE = eINSTANCE.getExistingTrim_Type();

		/**
		 * The meta object literal for the '<em><b>Keep</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute EXISTING_TRIM__KEEP = eINSTANCE.getExistingTrim_Keep();

		/**
		 * The meta object literal for the '<em><b>Raked</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute EXISTING_TRIM__RAKED = eINSTANCE.getExistingTrim_Raked();

		/**
		 * The meta object literal for the '{@link wainscribe.model.impl.ServiceImpl <em>Service</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see wainscribe.model.impl.ServiceImpl
		 * @see wainscribe.model.impl.WainscribePackageImpl#getService()
		 * @generated
		 */
		EClass SERVICE = eINSTANCE.getService();

		/**
		 * The meta object literal for the '<em><b>Kind</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SERVICE__KIND = eINSTANCE.getService_Kind();

		/**
		 * The meta object literal for the '{@link wainscribe.model.impl.PlacedFrameImpl <em>Placed Frame</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see wainscribe.model.impl.PlacedFrameImpl
		 * @see wainscribe.model.impl.WainscribePackageImpl#getPlacedFrame()
		 * @generated
		 */
		EClass PLACED_FRAME = eINSTANCE.getPlacedFrame();

		/**
		 * The meta object literal for the '{@link wainscribe.model.impl.ReferenceLineImpl <em>Reference Line</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see wainscribe.model.impl.ReferenceLineImpl
		 * @see wainscribe.model.impl.WainscribePackageImpl#getReferenceLine()
		 * @generated
		 */
		EClass REFERENCE_LINE = eINSTANCE.getReferenceLine();

		/**
		 * The meta object literal for the '<em><b>At</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute REFERENCE_LINE__AT = eINSTANCE.getReferenceLine_At();

		/**
		 * The meta object literal for the '{@link wainscribe.model.impl.AxisImpl <em>Axis</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see wainscribe.model.impl.AxisImpl
		 * @see wainscribe.model.impl.WainscribePackageImpl#getAxis()
		 * @generated
		 */
		EClass AXIS = eINSTANCE.getAxis();

		/**
		 * The meta object literal for the '{@link wainscribe.model.impl.GuideImpl <em>Guide</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see wainscribe.model.impl.GuideImpl
		 * @see wainscribe.model.impl.WainscribePackageImpl#getGuide()
		 * @generated
		 */
		EClass GUIDE = eINSTANCE.getGuide();

		/**
		 * The meta object literal for the '{@link wainscribe.model.impl.SurfaceZoneImpl <em>Surface Zone</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see wainscribe.model.impl.SurfaceZoneImpl
		 * @see wainscribe.model.impl.WainscribePackageImpl#getSurfaceZone()
		 * @generated
		 */
		EClass SURFACE_ZONE = eINSTANCE.getSurfaceZone();

		/**
		 * The meta object literal for the '<em><b>Surface</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SURFACE_ZONE__SURFACE = eINSTANCE.getSurfaceZone_Surface();

		/**
		 * The meta object literal for the '<em><b>Walls</b></em>' attribute list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SURFACE_ZONE__WALLS = eINSTANCE.getSurfaceZone_Walls();

		/**
		 * The meta object literal for the '{@link wainscribe.model.impl.FinishImpl <em>Finish</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see wainscribe.model.impl.FinishImpl
		 * @see wainscribe.model.impl.WainscribePackageImpl#getFinish()
		 * @generated
		 */
		EClass FINISH = eINSTANCE.getFinish();

		/**
		 * The meta object literal for the '<em><b>Zone</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference FINISH__ZONE = eINSTANCE.getFinish_Zone();

		/**
		 * The meta object literal for the '<em><b>Gloss</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FINISH__GLOSS = eINSTANCE.getFinish_Gloss();

		/**
		 * The meta object literal for the '<em><b>Binder</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FINISH__BINDER = eINSTANCE.getFinish_Binder();

		/**
		 * The meta object literal for the '<em><b>Substrate</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FINISH__SUBSTRATE = eINSTANCE.getFinish_Substrate();

		/**
		 * The meta object literal for the '<em><b>Sound</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FINISH__SOUND = eINSTANCE.getFinish_Sound();

		/**
		 * The meta object literal for the '<em><b>Texture</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FINISH__TEXTURE = eINSTANCE.getFinish_Texture();

		/**
		 * The meta object literal for the '<em><b>Disturb</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FINISH__DISTURB = eINSTANCE.getFinish_Disturb();

		/**
		 * The meta object literal for the '{@link wainscribe.model.impl.PaintImpl <em>Paint</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see wainscribe.model.impl.PaintImpl
		 * @see wainscribe.model.impl.WainscribePackageImpl#getPaint()
		 * @generated
		 */
		EClass PAINT = eINSTANCE.getPaint();

		/**
		 * The meta object literal for the '<em><b>Zone</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PAINT__ZONE = eINSTANCE.getPaint_Zone();

		/**
		 * The meta object literal for the '<em><b>Colour</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PAINT__COLOUR = eINSTANCE.getPaint_Colour();

		/**
		 * The meta object literal for the '<em><b>Gloss</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PAINT__GLOSS = eINSTANCE.getPaint_Gloss();

		/**
		 * The meta object literal for the '<em><b>Binder</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PAINT__BINDER = eINSTANCE.getPaint_Binder();

		/**
		 * The meta object literal for the '<em><b>Scrub</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PAINT__SCRUB = eINSTANCE.getPaint_Scrub();

		/**
		 * The meta object literal for the '<em><b>Mildew</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PAINT__MILDEW = eINSTANCE.getPaint_Mildew();

		/**
		 * The meta object literal for the '<em><b>Coats</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PAINT__COATS = eINSTANCE.getPaint_Coats();

		/**
		 * The meta object literal for the '<em><b>Clean</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PAINT__CLEAN = eINSTANCE.getPaint_Clean();

		/**
		 * The meta object literal for the '<em><b>Degloss</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PAINT__DEGLOSS = eINSTANCE.getPaint_Degloss();

		/**
		 * The meta object literal for the '<em><b>Primer</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PAINT__PRIMER = eINSTANCE.getPaint_Primer();

		/**
		 * The meta object literal for the '{@link wainscribe.model.impl.ProfileReferenceImpl <em>Profile Reference</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see wainscribe.model.impl.ProfileReferenceImpl
		 * @see wainscribe.model.impl.WainscribePackageImpl#getProfileReference()
		 * @generated
		 */
		EClass PROFILE_REFERENCE = eINSTANCE.getProfileReference();

		/**
		 * The meta object literal for the '<em><b>Use</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PROFILE_REFERENCE__USE = eINSTANCE.getProfileReference_Use();

		/**
		 * The meta object literal for the '<em><b>Profile</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PROFILE_REFERENCE__PROFILE = eINSTANCE.getProfileReference_Profile();

		/**
		 * The meta object literal for the '{@link wainscribe.model.impl.BriefImpl <em>Brief</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see wainscribe.model.impl.BriefImpl
		 * @see wainscribe.model.impl.WainscribePackageImpl#getBrief()
		 * @generated
		 */
		EClass BRIEF = eINSTANCE.getBrief();

		/**
		 * The meta object literal for the '<em><b>Pattern</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BRIEF__PATTERN = eINSTANCE.getBrief_Pattern();

		/**
		 * The meta object literal for the '<em><b>Rail</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BRIEF__RAIL = eINSTANCE.getBrief_Rail();

		/**
		 * The meta object literal for the '<em><b>Rail Face</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BRIEF__RAIL_FACE = eINSTANCE.getBrief_RailFace();

		/**
		 * The meta object literal for the '<em><b>Rail Thickness</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BRIEF__RAIL_THICKNESS = eINSTANCE.getBrief_RailThickness();

		/**
		 * The meta object literal for the '<em><b>Gap</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BRIEF__GAP = eINSTANCE.getBrief_Gap();

		/**
		 * The meta object literal for the '<em><b>Gap Y</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BRIEF__GAP_Y = eINSTANCE.getBrief_GapY();

		/**
		 * The meta object literal for the '<em><b>Face</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BRIEF__FACE = eINSTANCE.getBrief_Face();

		/**
		 * The meta object literal for the '<em><b>Thickness</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BRIEF__THICKNESS = eINSTANCE.getBrief_Thickness();

		/**
		 * The meta object literal for the '<em><b>Frame Width Min</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BRIEF__FRAME_WIDTH_MIN = eINSTANCE.getBrief_FrameWidthMin();

		/**
		 * The meta object literal for the '<em><b>Frame Width Max</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BRIEF__FRAME_WIDTH_MAX = eINSTANCE.getBrief_FrameWidthMax();

		/**
		 * The meta object literal for the '<em><b>Base</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BRIEF__BASE = eINSTANCE.getBrief_Base();

		/**
		 * The meta object literal for the '<em><b>Crown</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BRIEF__CROWN = eINSTANCE.getBrief_Crown();

		/**
		 * The meta object literal for the '<em><b>Material</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BRIEF__MATERIAL = eINSTANCE.getBrief_Material();

		/**
		 * The meta object literal for the '<em><b>Stock</b></em>' attribute list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BRIEF__STOCK = eINSTANCE.getBrief_Stock();

		/**
		 * The meta object literal for the '<em><b>Nail</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BRIEF__NAIL = eINSTANCE.getBrief_Nail();

		/**
		 * The meta object literal for the '<em><b>Board</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BRIEF__BOARD = eINSTANCE.getBrief_Board();

		/**
		 * The meta object literal for the '<em><b>Board Walls</b></em>' attribute list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BRIEF__BOARD_WALLS = eINSTANCE.getBrief_BoardWalls();

		/**
		 * The meta object literal for the '<em><b>Profiles</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference BRIEF__PROFILES = eINSTANCE.getBrief_Profiles();

		/**
		 * The meta object literal for the '<em><b>Inside</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BRIEF__INSIDE = eINSTANCE.getBrief_Inside();

		/**
		 * The meta object literal for the '<em><b>Base At Casing</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BRIEF__BASE_AT_CASING = eINSTANCE.getBrief_BaseAtCasing();

		/**
		 * The meta object literal for the '<em><b>Saw</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BRIEF__SAW = eINSTANCE.getBrief_Saw();

		/**
		 * The meta object literal for the '<em><b>Glass Lap</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BRIEF__GLASS_LAP = eINSTANCE.getBrief_GlassLap();

		/**
		 * The meta object literal for the '<em><b>Glass Clearance</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BRIEF__GLASS_CLEARANCE = eINSTANCE.getBrief_GlassClearance();

		/**
		 * The meta object literal for the '{@link wainscribe.model.impl.PriceImpl <em>Price</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see wainscribe.model.impl.PriceImpl
		 * @see wainscribe.model.impl.WainscribePackageImpl#getPrice()
		 * @generated
		 */
		EClass PRICE = eINSTANCE.getPrice();

		/**
		 * The meta object literal for the '<em><b>Item</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PRICE__ITEM = eINSTANCE.getPrice_Item();

		/**
		 * The meta object literal for the '<em><b>Unit</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PRICE__UNIT = eINSTANCE.getPrice_Unit();

		/**
		 * The meta object literal for the '<em><b>Pack Length</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PRICE__PACK_LENGTH = eINSTANCE.getPrice_PackLength();

		/**
		 * The meta object literal for the '<em><b>Pack</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PRICE__PACK = eINSTANCE.getPrice_Pack();

		/**
		 * The meta object literal for the '<em><b>Amount</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PRICE__AMOUNT = eINSTANCE.getPrice_Amount();

		/**
		 * The meta object literal for the '{@link wainscribe.model.impl.StoredOffcutImpl <em>Stored Offcut</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see wainscribe.model.impl.StoredOffcutImpl
		 * @see wainscribe.model.impl.WainscribePackageImpl#getStoredOffcut()
		 * @generated
		 */
		EClass STORED_OFFCUT = eINSTANCE.getStoredOffcut();

		/**
		 * The meta object literal for the '<em><b>Profile</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STORED_OFFCUT__PROFILE = eINSTANCE.getStoredOffcut_Profile();

		/**
		 * The meta object literal for the '<em><b>Material</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STORED_OFFCUT__MATERIAL = eINSTANCE.getStoredOffcut_Material();

		/**
		 * The meta object literal for the '<em><b>Length</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STORED_OFFCUT__LENGTH = eINSTANCE.getStoredOffcut_Length();

		/**
		 * The meta object literal for the '<em><b>Origin</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STORED_OFFCUT__ORIGIN = eINSTANCE.getStoredOffcut_Origin();

		/**
		 * The meta object literal for the '{@link wainscribe.model.impl.CutBarImpl <em>Cut Bar</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see wainscribe.model.impl.CutBarImpl
		 * @see wainscribe.model.impl.WainscribePackageImpl#getCutBar()
		 * @generated
		 */
		EClass CUT_BAR = eINSTANCE.getCutBar();

		/**
		 * The meta object literal for the '<em><b>Profile</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CUT_BAR__PROFILE = eINSTANCE.getCutBar_Profile();

		/**
		 * The meta object literal for the '<em><b>Material</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CUT_BAR__MATERIAL = eINSTANCE.getCutBar_Material();

		/**
		 * The meta object literal for the '<em><b>Length</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CUT_BAR__LENGTH = eINSTANCE.getCutBar_Length();

		/**
		 * The meta object literal for the '<em><b>Price</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CUT_BAR__PRICE = eINSTANCE.getCutBar_Price();

		/**
		 * The meta object literal for the '<em><b>Pieces</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference CUT_BAR__PIECES = eINSTANCE.getCutBar_Pieces();

		/**
		 * The meta object literal for the '{@link wainscribe.model.impl.CutPieceImpl <em>Cut Piece</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see wainscribe.model.impl.CutPieceImpl
		 * @see wainscribe.model.impl.WainscribePackageImpl#getCutPiece()
		 * @generated
		 */
		EClass CUT_PIECE = eINSTANCE.getCutPiece();

		/**
		 * The meta object literal for the '<em><b>Room</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CUT_PIECE__ROOM = eINSTANCE.getCutPiece_Room();

		/**
		 * The meta object literal for the '<em><b>Label</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CUT_PIECE__LABEL = eINSTANCE.getCutPiece_Label();

		/**
		 * The meta object literal for the '<em><b>Length</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CUT_PIECE__LENGTH = eINSTANCE.getCutPiece_Length();

		/**
		 * The meta object literal for the '{@link wainscribe.model.RoomUse <em>Room Use</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see wainscribe.model.RoomUse
		 * @see wainscribe.model.impl.WainscribePackageImpl#getRoomUse()
		 * @generated
		 */
		EEnum ROOM_USE = eINSTANCE.getRoomUse();

		/**
		 * The meta object literal for the '{@link wainscribe.model.FanOutlet <em>Fan Outlet</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see wainscribe.model.FanOutlet
		 * @see wainscribe.model.impl.WainscribePackageImpl#getFanOutlet()
		 * @generated
		 */
		EEnum FAN_OUTLET = eINSTANCE.getFanOutlet();

		/**
		 * The meta object literal for the '{@link wainscribe.model.FanMode <em>Fan Mode</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see wainscribe.model.FanMode
		 * @see wainscribe.model.impl.WainscribePackageImpl#getFanMode()
		 * @generated
		 */
		EEnum FAN_MODE = eINSTANCE.getFanMode();

		/**
		 * The meta object literal for the '{@link wainscribe.model.OpeningKind <em>Opening Kind</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see wainscribe.model.OpeningKind
		 * @see wainscribe.model.impl.WainscribePackageImpl#getOpeningKind()
		 * @generated
		 */
		EEnum OPENING_KIND = eINSTANCE.getOpeningKind();

		/**
		 * The meta object literal for the '{@link wainscribe.model.Swing <em>Swing</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see wainscribe.model.Swing
		 * @see wainscribe.model.impl.WainscribePackageImpl#getSwing()
		 * @generated
		 */
		EEnum SWING = eINSTANCE.getSwing();

		/**
		 * The meta object literal for the '{@link wainscribe.model.Glazing <em>Glazing</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see wainscribe.model.Glazing
		 * @see wainscribe.model.impl.WainscribePackageImpl#getGlazing()
		 * @generated
		 */
		EEnum GLAZING = eINSTANCE.getGlazing();

		/**
		 * The meta object literal for the '{@link wainscribe.model.BoxType <em>Box Type</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see wainscribe.model.BoxType
		 * @see wainscribe.model.impl.WainscribePackageImpl#getBoxType()
		 * @generated
		 */
		EEnum BOX_TYPE = eINSTANCE.getBoxType();

		/**
		 * The meta object literal for the '{@link wainscribe.model.FixtureType <em>Fixture Type</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see wainscribe.model.FixtureType
		 * @see wainscribe.model.impl.WainscribePackageImpl#getFixtureType()
		 * @generated
		 */
		EEnum FIXTURE_TYPE = eINSTANCE.getFixtureType();

		/**
		 * The meta object literal for the '{@link wainscribe.model.HeatSource <em>Heat Source</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see wainscribe.model.HeatSource
		 * @see wainscribe.model.impl.WainscribePackageImpl#getHeatSource()
		 * @generated
		 */
		EEnum HEAT_SOURCE = eINSTANCE.getHeatSource();

		/**
		 * The meta object literal for the '{@link wainscribe.model.Support <em>Support</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see wainscribe.model.Support
		 * @see wainscribe.model.impl.WainscribePackageImpl#getSupport()
		 * @generated
		 */
		EEnum SUPPORT = eINSTANCE.getSupport();

		/**
		 * The meta object literal for the '{@link wainscribe.model.Fixing <em>Fixing</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see wainscribe.model.Fixing
		 * @see wainscribe.model.impl.WainscribePackageImpl#getFixing()
		 * @generated
		 */
		EEnum FIXING = eINSTANCE.getFixing();

		/**
		 * The meta object literal for the '{@link wainscribe.model.TrimType <em>Trim Type</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see wainscribe.model.TrimType
		 * @see wainscribe.model.impl.WainscribePackageImpl#getTrimType()
		 * @generated
		 */
		EEnum TRIM_TYPE = eINSTANCE.getTrimType();

		/**
		 * The meta object literal for the '{@link wainscribe.model.ServiceKind <em>Service Kind</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see wainscribe.model.ServiceKind
		 * @see wainscribe.model.impl.WainscribePackageImpl#getServiceKind()
		 * @generated
		 */
		EEnum SERVICE_KIND = eINSTANCE.getServiceKind();

		/**
		 * The meta object literal for the '{@link wainscribe.model.Surface <em>Surface</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see wainscribe.model.Surface
		 * @see wainscribe.model.impl.WainscribePackageImpl#getSurface()
		 * @generated
		 */
		EEnum SURFACE = eINSTANCE.getSurface();

		/**
		 * The meta object literal for the '{@link wainscribe.model.GlossLevel <em>Gloss Level</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see wainscribe.model.GlossLevel
		 * @see wainscribe.model.impl.WainscribePackageImpl#getGlossLevel()
		 * @generated
		 */
		EEnum GLOSS_LEVEL = eINSTANCE.getGlossLevel();

		/**
		 * The meta object literal for the '{@link wainscribe.model.Binder <em>Binder</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see wainscribe.model.Binder
		 * @see wainscribe.model.impl.WainscribePackageImpl#getBinder()
		 * @generated
		 */
		EEnum BINDER = eINSTANCE.getBinder();

		/**
		 * The meta object literal for the '{@link wainscribe.model.Substrate <em>Substrate</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see wainscribe.model.Substrate
		 * @see wainscribe.model.impl.WainscribePackageImpl#getSubstrate()
		 * @generated
		 */
		EEnum SUBSTRATE = eINSTANCE.getSubstrate();

		/**
		 * The meta object literal for the '{@link wainscribe.model.Soundness <em>Soundness</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see wainscribe.model.Soundness
		 * @see wainscribe.model.impl.WainscribePackageImpl#getSoundness()
		 * @generated
		 */
		EEnum SOUNDNESS = eINSTANCE.getSoundness();

		/**
		 * The meta object literal for the '{@link wainscribe.model.Primer <em>Primer</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see wainscribe.model.Primer
		 * @see wainscribe.model.impl.WainscribePackageImpl#getPrimer()
		 * @generated
		 */
		EEnum PRIMER = eINSTANCE.getPrimer();

		/**
		 * The meta object literal for the '{@link wainscribe.model.Material <em>Material</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see wainscribe.model.Material
		 * @see wainscribe.model.impl.WainscribePackageImpl#getMaterial()
		 * @generated
		 */
		EEnum MATERIAL = eINSTANCE.getMaterial();

		/**
		 * The meta object literal for the '{@link wainscribe.model.InsideJoint <em>Inside Joint</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see wainscribe.model.InsideJoint
		 * @see wainscribe.model.impl.WainscribePackageImpl#getInsideJoint()
		 * @generated
		 */
		EEnum INSIDE_JOINT = eINSTANCE.getInsideJoint();

		/**
		 * The meta object literal for the '{@link wainscribe.model.CasingJoint <em>Casing Joint</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see wainscribe.model.CasingJoint
		 * @see wainscribe.model.impl.WainscribePackageImpl#getCasingJoint()
		 * @generated
		 */
		EEnum CASING_JOINT = eINSTANCE.getCasingJoint();

		/**
		 * The meta object literal for the '{@link wainscribe.model.SawScale <em>Saw Scale</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see wainscribe.model.SawScale
		 * @see wainscribe.model.impl.WainscribePackageImpl#getSawScale()
		 * @generated
		 */
		EEnum SAW_SCALE = eINSTANCE.getSawScale();

		/**
		 * The meta object literal for the '{@link wainscribe.model.ProfileUse <em>Profile Use</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see wainscribe.model.ProfileUse
		 * @see wainscribe.model.impl.WainscribePackageImpl#getProfileUse()
		 * @generated
		 */
		EEnum PROFILE_USE = eINSTANCE.getProfileUse();

		/**
		 * The meta object literal for the '{@link wainscribe.model.PriceUnit <em>Price Unit</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see wainscribe.model.PriceUnit
		 * @see wainscribe.model.impl.WainscribePackageImpl#getPriceUnit()
		 * @generated
		 */
		EEnum PRICE_UNIT = eINSTANCE.getPriceUnit();

		/**
		 * The meta object literal for the '<em>Length</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see wainscribe.model.length.Length
		 * @see wainscribe.model.impl.WainscribePackageImpl#getLength()
		 * @generated
		 */
		EDataType LENGTH = eINSTANCE.getLength();

		/**
		 * The meta object literal for the '<em>Length Unit</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see wainscribe.model.length.LengthUnit
		 * @see wainscribe.model.impl.WainscribePackageImpl#getLengthUnit()
		 * @generated
		 */
		EDataType LENGTH_UNIT = eINSTANCE.getLengthUnit();

		/**
		 * The meta object literal for the '<em>Measure</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see wainscribe.model.measure.Measure
		 * @see wainscribe.model.impl.WainscribePackageImpl#getMeasure()
		 * @generated
		 */
		EDataType MEASURE = eINSTANCE.getMeasure();

	}

} //WainscribePackage
