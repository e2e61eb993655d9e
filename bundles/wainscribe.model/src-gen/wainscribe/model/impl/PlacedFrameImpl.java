/**
 * SPDX-License-Identifier: EPL-2.0
 */
package wainscribe.model.impl;

import org.eclipse.emf.ecore.EClass;

import wainscribe.model.PlacedFrame;
import wainscribe.model.WainscribePackage;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Placed Frame</b></em>'.
 * <!-- end-user-doc -->
 *
 * @generated
 */
public class PlacedFrameImpl extends PlacedImpl implements PlacedFrame {
	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected PlacedFrameImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return WainscribePackage.Literals.PLACED_FRAME;
	}

} //PlacedFrameImpl
