/**
 * SPDX-License-Identifier: EPL-2.0
 */
package wainscribe.model;

import org.eclipse.emf.ecore.EObject;

import wainscribe.model.length.Length;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Cut Piece</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A piece of an accepted cutting plan. It counts as cut while the cut list has this piece in this length.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link wainscribe.model.CutPiece#getRoom <em>Room</em>}</li>
 *   <li>{@link wainscribe.model.CutPiece#getLabel <em>Label</em>}</li>
 *   <li>{@link wainscribe.model.CutPiece#getLength <em>Length</em>}</li>
 * </ul>
 *
 * @see wainscribe.model.WainscribePackage#getCutPiece()
 * @model
 * @generated
 */
public interface CutPiece extends EObject {
	/**
	 * Returns the value of the '<em><b>Room</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Name of its room.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Room</em>' attribute.
	 * @see #setRoom(String)
	 * @see wainscribe.model.WainscribePackage#getCutPiece_Room()
	 * @model
	 * @generated
	 */
	String getRoom();

	/**
	 * Sets the value of the '{@link wainscribe.model.CutPiece#getRoom <em>Room</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Room</em>' attribute.
	 * @see #getRoom()
	 * @generated
	 */
	void setRoom(String value);

	/**
	 * Returns the value of the '<em><b>Label</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Its label in the cut list of the room.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Label</em>' attribute.
	 * @see #setLabel(String)
	 * @see wainscribe.model.WainscribePackage#getCutPiece_Label()
	 * @model
	 * @generated
	 */
	String getLabel();

	/**
	 * Sets the value of the '{@link wainscribe.model.CutPiece#getLabel <em>Label</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Label</em>' attribute.
	 * @see #getLabel()
	 * @generated
	 */
	void setLabel(String value);

	/**
	 * Returns the value of the '<em><b>Length</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Its length from long point to long point.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Length</em>' attribute.
	 * @see #setLength(Length)
	 * @see wainscribe.model.WainscribePackage#getCutPiece_Length()
	 * @model dataType="wainscribe.model.Length"
	 * @generated
	 */
	Length getLength();

	/**
	 * Sets the value of the '{@link wainscribe.model.CutPiece#getLength <em>Length</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Length</em>' attribute.
	 * @see #getLength()
	 * @generated
	 */
	void setLength(Length value);

} // CutPiece
