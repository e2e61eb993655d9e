/**
 * SPDX-License-Identifier: EPL-2.0
 */
package wainscribe.model.dispatch;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EPackage;

import org.eclipse.emf.ecore.util.Switch;

import wainscribe.model.*;

/**
 * <!-- begin-user-doc -->
 * The <b>Switch</b> for the model's inheritance hierarchy.
 * It supports the call {@link #doSwitch(EObject) doSwitch(object)}
 * to invoke the <code>caseXXX</code> method for each class of the model,
 * starting with the actual class of the object
 * and proceeding up the inheritance hierarchy
 * until a non-null result is returned,
 * which is the result of the switch.
 * <!-- end-user-doc -->
 * @see wainscribe.model.WainscribePackage
 * @generated
 */
public class WainscribeSwitch<T> extends Switch<T> {
	/**
	 * The cached model package
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected static WainscribePackage modelPackage;

	/**
	 * Creates an instance of the switch.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public WainscribeSwitch() {
		if (modelPackage == null) {
			modelPackage = WainscribePackage.eINSTANCE;
		}
	}

	/**
	 * Checks whether this is a switch for the given package.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param ePackage the package in question.
	 * @return whether this is a switch for the given package.
	 * @generated
	 */
	@Override
	protected boolean isSwitchFor(EPackage ePackage) {
		return ePackage == modelPackage;
	}

	/**
	 * Calls <code>caseXXX</code> for each class of the model until one returns a non null result; it yields that result.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the first non-null result returned by a <code>caseXXX</code> call.
	 * @generated
	 */
	@Override
	protected T doSwitch(int classifierID, EObject theEObject) {
		switch (classifierID) {
			case WainscribePackage.ELEMENT: {
				Element element = (Element)theEObject;
				T result = caseElement(element);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case WainscribePackage.HOME: {
				Home home = (Home)theEObject;
				T result = caseHome(home);
				if (result == null) result = caseElement(home);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case WainscribePackage.ROOM: {
				Room room = (Room)theEObject;
				T result = caseRoom(room);
				if (result == null) result = caseElement(room);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case WainscribePackage.WALL: {
				Wall wall = (Wall)theEObject;
				T result = caseWall(wall);
				if (result == null) result = caseElement(wall);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case WainscribePackage.CORNER: {
				Corner corner = (Corner)theEObject;
				T result = caseCorner(corner);
				if (result == null) result = caseElement(corner);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case WainscribePackage.DIAGONAL: {
				Diagonal diagonal = (Diagonal)theEObject;
				T result = caseDiagonal(diagonal);
				if (result == null) result = caseElement(diagonal);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case WainscribePackage.PLACED: {
				Placed placed = (Placed)theEObject;
				T result = casePlaced(placed);
				if (result == null) result = caseElement(placed);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case WainscribePackage.OPENING: {
				Opening opening = (Opening)theEObject;
				T result = caseOpening(opening);
				if (result == null) result = casePlaced(opening);
				if (result == null) result = caseElement(opening);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case WainscribePackage.FIXTURE: {
				Fixture fixture = (Fixture)theEObject;
				T result = caseFixture(fixture);
				if (result == null) result = casePlaced(fixture);
				if (result == null) result = caseElement(fixture);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case WainscribePackage.BOX: {
				Box box = (Box)theEObject;
				T result = caseBox(box);
				if (result == null) result = casePlaced(box);
				if (result == null) result = caseElement(box);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case WainscribePackage.EXISTING_TRIM: {
				ExistingTrim existingTrim = (ExistingTrim)theEObject;
				T result = caseExistingTrim(existingTrim);
				if (result == null) result = casePlaced(existingTrim);
				if (result == null) result = caseElement(existingTrim);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case WainscribePackage.SERVICE: {
				Service service = (Service)theEObject;
				T result = caseService(service);
				if (result == null) result = casePlaced(service);
				if (result == null) result = caseElement(service);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case WainscribePackage.PLACED_FRAME: {
				PlacedFrame placedFrame = (PlacedFrame)theEObject;
				T result = casePlacedFrame(placedFrame);
				if (result == null) result = casePlaced(placedFrame);
				if (result == null) result = caseElement(placedFrame);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case WainscribePackage.REFERENCE_LINE: {
				ReferenceLine referenceLine = (ReferenceLine)theEObject;
				T result = caseReferenceLine(referenceLine);
				if (result == null) result = caseElement(referenceLine);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case WainscribePackage.AXIS: {
				Axis axis = (Axis)theEObject;
				T result = caseAxis(axis);
				if (result == null) result = caseReferenceLine(axis);
				if (result == null) result = caseElement(axis);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case WainscribePackage.GUIDE: {
				Guide guide = (Guide)theEObject;
				T result = caseGuide(guide);
				if (result == null) result = caseReferenceLine(guide);
				if (result == null) result = caseElement(guide);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case WainscribePackage.SURFACE_ZONE: {
				SurfaceZone surfaceZone = (SurfaceZone)theEObject;
				T result = caseSurfaceZone(surfaceZone);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case WainscribePackage.FINISH: {
				Finish finish = (Finish)theEObject;
				T result = caseFinish(finish);
				if (result == null) result = caseElement(finish);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case WainscribePackage.PAINT: {
				Paint paint = (Paint)theEObject;
				T result = casePaint(paint);
				if (result == null) result = caseElement(paint);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case WainscribePackage.PROFILE_REFERENCE: {
				ProfileReference profileReference = (ProfileReference)theEObject;
				T result = caseProfileReference(profileReference);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case WainscribePackage.BRIEF: {
				Brief brief = (Brief)theEObject;
				T result = caseBrief(brief);
				if (result == null) result = caseElement(brief);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case WainscribePackage.PRICE: {
				Price price = (Price)theEObject;
				T result = casePrice(price);
				if (result == null) result = caseElement(price);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case WainscribePackage.STORED_OFFCUT: {
				StoredOffcut storedOffcut = (StoredOffcut)theEObject;
				T result = caseStoredOffcut(storedOffcut);
				if (result == null) result = caseElement(storedOffcut);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case WainscribePackage.CUT_BAR: {
				CutBar cutBar = (CutBar)theEObject;
				T result = caseCutBar(cutBar);
				if (result == null) result = caseElement(cutBar);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case WainscribePackage.CUT_PIECE: {
				CutPiece cutPiece = (CutPiece)theEObject;
				T result = caseCutPiece(cutPiece);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			default: return defaultCase(theEObject);
		}
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Element</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Element</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseElement(Element object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Home</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Home</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseHome(Home object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Room</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Room</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseRoom(Room object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Wall</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Wall</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseWall(Wall object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Corner</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Corner</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseCorner(Corner object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Diagonal</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Diagonal</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseDiagonal(Diagonal object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Placed</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Placed</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T casePlaced(Placed object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Opening</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Opening</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseOpening(Opening object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Fixture</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Fixture</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseFixture(Fixture object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Box</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Box</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseBox(Box object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Existing Trim</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Existing Trim</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseExistingTrim(ExistingTrim object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Service</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Service</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseService(Service object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Placed Frame</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Placed Frame</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T casePlacedFrame(PlacedFrame object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Reference Line</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Reference Line</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseReferenceLine(ReferenceLine object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Axis</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Axis</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseAxis(Axis object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Guide</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Guide</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseGuide(Guide object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Surface Zone</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Surface Zone</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseSurfaceZone(SurfaceZone object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Finish</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Finish</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseFinish(Finish object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Paint</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Paint</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T casePaint(Paint object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Profile Reference</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Profile Reference</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseProfileReference(ProfileReference object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Brief</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Brief</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseBrief(Brief object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Price</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Price</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T casePrice(Price object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Stored Offcut</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Stored Offcut</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseStoredOffcut(StoredOffcut object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Cut Bar</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Cut Bar</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseCutBar(CutBar object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Cut Piece</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Cut Piece</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseCutPiece(CutPiece object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>EObject</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch, but this is the last case anyway.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>EObject</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject)
	 * @generated
	 */
	@Override
	public T defaultCase(EObject object) {
		return null;
	}

} //WainscribeSwitch
