/**
 * SPDX-License-Identifier: EPL-2.0
 */
package wainscribe.model.impl;

import org.eclipse.emf.ecore.EClass;

import wainscribe.model.Axis;
import wainscribe.model.WainscribePackage;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Axis</b></em>'.
 * <!-- end-user-doc -->
 *
 * @generated
 */
public class AxisImpl extends ReferenceLineImpl implements Axis {
	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected AxisImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return WainscribePackage.Literals.AXIS;
	}

} //AxisImpl
