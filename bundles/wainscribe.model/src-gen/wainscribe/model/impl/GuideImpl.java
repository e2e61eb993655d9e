/**
 * SPDX-License-Identifier: EPL-2.0
 */
package wainscribe.model.impl;

import org.eclipse.emf.ecore.EClass;

import wainscribe.model.Guide;
import wainscribe.model.WainscribePackage;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Guide</b></em>'.
 * <!-- end-user-doc -->
 *
 * @generated
 */
public class GuideImpl extends ReferenceLineImpl implements Guide {
	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected GuideImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return WainscribePackage.Literals.GUIDE;
	}

} //GuideImpl
