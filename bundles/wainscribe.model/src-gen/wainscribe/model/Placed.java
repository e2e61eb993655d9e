/**
 * SPDX-License-Identifier: EPL-2.0
 */
package wainscribe.model;

import wainscribe.model.length.Length;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Placed</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * Something with an outline on a wall. x and y are the lower left corner of the outline.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link wainscribe.model.Placed#getX <em>X</em>}</li>
 *   <li>{@link wainscribe.model.Placed#getY <em>Y</em>}</li>
 *   <li>{@link wainscribe.model.Placed#getWidth <em>Width</em>}</li>
 *   <li>{@link wainscribe.model.Placed#getHeight <em>Height</em>}</li>
 *   <li>{@link wainscribe.model.Placed#getDepth <em>Depth</em>}</li>
 * </ul>
 *
 * @see wainscribe.model.WainscribePackage#getPlaced()
 * @model abstract="true"
 * @generated
 */
public interface Placed extends Element {
	/**
	 * Returns the value of the '<em><b>X</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * From the left end of the wall.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>X</em>' attribute.
	 * @see #setX(Length)
	 * @see wainscribe.model.WainscribePackage#getPlaced_X()
	 * @model dataType="wainscribe.model.Length"
	 * @generated
	 */
	Length getX();

	/**
	 * Sets the value of the '{@link wainscribe.model.Placed#getX <em>X</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>X</em>' attribute.
	 * @see #getX()
	 * @generated
	 */
	void setX(Length value);

	/**
	 * Returns the value of the '<em><b>Y</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * From the floor line up.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Y</em>' attribute.
	 * @see #setY(Length)
	 * @see wainscribe.model.WainscribePackage#getPlaced_Y()
	 * @model dataType="wainscribe.model.Length"
	 * @generated
	 */
	Length getY();

	/**
	 * Sets the value of the '{@link wainscribe.model.Placed#getY <em>Y</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Y</em>' attribute.
	 * @see #getY()
	 * @generated
	 */
	void setY(Length value);

	/**
	 * Returns the value of the '<em><b>Width</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Width of the outline. Null: not measured.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Width</em>' attribute.
	 * @see #setWidth(Length)
	 * @see wainscribe.model.WainscribePackage#getPlaced_Width()
	 * @model dataType="wainscribe.model.Length"
	 * @generated
	 */
	Length getWidth();

	/**
	 * Sets the value of the '{@link wainscribe.model.Placed#getWidth <em>Width</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Width</em>' attribute.
	 * @see #getWidth()
	 * @generated
	 */
	void setWidth(Length value);

	/**
	 * Returns the value of the '<em><b>Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Height of the outline. Null: not measured.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Height</em>' attribute.
	 * @see #setHeight(Length)
	 * @see wainscribe.model.WainscribePackage#getPlaced_Height()
	 * @model dataType="wainscribe.model.Length"
	 * @generated
	 */
	Length getHeight();

	/**
	 * Sets the value of the '{@link wainscribe.model.Placed#getHeight <em>Height</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Height</em>' attribute.
	 * @see #getHeight()
	 * @generated
	 */
	void setHeight(Length value);

	/**
	 * Returns the value of the '<em><b>Depth</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Projection from the wall face; of a service: depth behind the face. Null: not measured.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Depth</em>' attribute.
	 * @see #setDepth(Length)
	 * @see wainscribe.model.WainscribePackage#getPlaced_Depth()
	 * @model dataType="wainscribe.model.Length"
	 * @generated
	 */
	Length getDepth();

	/**
	 * Sets the value of the '{@link wainscribe.model.Placed#getDepth <em>Depth</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Depth</em>' attribute.
	 * @see #getDepth()
	 * @generated
	 */
	void setDepth(Length value);

} // Placed
