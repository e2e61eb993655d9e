// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.properties;

import static java.util.Objects.requireNonNull;

import java.time.Year;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.eclipse.emf.common.util.Enumerator;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EClassifier;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EEnumLiteral;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.EcorePackage;
import org.eclipse.ui.views.properties.PropertyDescriptor;

import wainscribe.model.WainscribePackage.Literals;
import wainscribe.model.length.LengthUnit;
import wainscribe.model.measure.MeasureUnit;

/** Decides with which kind of field a feature of the model is edited. */
final class FeatureDescriptors {

	/** Kept by the files, never edited by hand. */
	private static final Set<EStructuralFeature> HIDDEN = Set.of(Literals.ELEMENT__ID, Literals.ELEMENT__NOTES,
		Literals.HOME__FORMAT_VERSION, Literals.ROOM__FORMAT_VERSION, Literals.HOME__ROOM_ORDER);
	private static final Set<EStructuralFeature> SIZES = Set.of(Literals.WALL__LENGTH, Literals.WALL__HEIGHT,
		Literals.WALL__HEIGHT_RIGHT, Literals.ROOM__HEIGHT, Literals.PLACED__WIDTH, Literals.PLACED__HEIGHT,
		Literals.BRIEF__RAIL, Literals.BRIEF__RAIL_FACE, Literals.BRIEF__RAIL_THICKNESS, Literals.BRIEF__GAP,
		Literals.BRIEF__GAP_Y, Literals.BRIEF__FACE, Literals.BRIEF__THICKNESS, Literals.BRIEF__STOCK,
		Literals.BRIEF__FRAME_WIDTH_MIN, Literals.BRIEF__FRAME_WIDTH_MAX, Literals.CORNER__LEG_THIS, Literals.CORNER__LEG_NEXT,
		Literals.CORNER__DIAGONAL, Literals.DIAGONAL__DISTANCE, Literals.WALL__STUD_SPACING);
	private static final Set<EStructuralFeature> REQUIRED = Set.of(Literals.WALL__LENGTH, Literals.PLACED__X, Literals.PLACED__Y,
		Literals.REFERENCE_LINE__AT);
	private static final int OLDEST_HOUSE = 1000;
	private static final int MOST_GANGS = 12;
	private static final int MOST_COATS = 9;
	private static final int SCRUB_CLASSES = 5;

	private final FeatureWords words;
	private final LengthUnit unit;
	private final ChoicesOfBrief briefChoices;

	FeatureDescriptors(FeatureWords words, LengthUnit unit, ChoicesOfBrief briefChoices) {
		this.words = requireNonNull(words);
		this.unit = requireNonNull(unit);
		this.briefChoices = requireNonNull(briefChoices);
	}

	/** Describes a feature; empty for one that is not edited in a property sheet. */
	Optional<PropertyDescriptor> of(EClass type, EStructuralFeature feature) {
		if (HIDDEN.contains(feature) || !feature.isChangeable()) {
			return Optional.empty();
		}
		Optional<PropertyDescriptor> descriptor = feature instanceof EReference reference ? nested(type, reference)
			: attribute(type, feature);
		descriptor.ifPresent(found -> found.setCategory(words.groupOf(type, feature)));
		return descriptor;
	}

	/** Returns what can be chosen in a brief. */
	ChoicesOfBrief briefChoices() {
		return briefChoices;
	}

	/** Tells whether a feature is chosen from a list rather than typed. */
	boolean isChosen(EStructuralFeature feature) {
		return choices(feature).isPresent();
	}

	/** A part that belongs to one element alone opens as properties of its own. */
	private Optional<PropertyDescriptor> nested(EClass type, EReference reference) {
		return reference.isContainment() && !reference.isMany() && reference.getEReferenceType() != Literals.BRIEF
			? Optional.of(new PropertyDescriptor(reference, words.of(type, reference)))
			: Optional.empty();
	}

	private Optional<PropertyDescriptor> attribute(EClass type, EStructuralFeature feature) {
		String name = words.of(type, feature);
		Optional<Choices> choices = choices(feature);
		if (choices.isPresent()) {
			return Optional.of(new ChoiceDescriptor(feature, name, choices.get()));
		}
		boolean required = REQUIRED.contains(feature);
		return text(feature).map(text -> feature.isMany() ? new TextValueDescriptor<>(feature, name, new ListText<>(text), false)
			: new TextValueDescriptor<>(feature, name, text, required));
	}

	private Optional<ValueText<?>> text(EStructuralFeature feature) {
		EClassifier type = feature.getEType();
		if (type == Literals.LENGTH) {
			return Optional.of(new LengthText(unit, range(feature)));
		}
		if (type == Literals.MEASURE) {
			return Optional.of(new MeasureText(kind(feature)));
		}
		if (type == EcorePackage.Literals.EINTEGER_OBJECT) {
			return Optional.of(wholeNumber(feature));
		}
		if (type == EcorePackage.Literals.EBIG_DECIMAL) {
			return Optional.of(feature == Literals.WALL__ANGLE ? new AngleText() : new AmountText());
		}
		if (type == EcorePackage.Literals.ESTRING) {
			return Optional.of(feature == Literals.PAINT__COLOUR ? new ColourText() : new PlainText());
		}
		return Optional.empty();
	}

	private static LengthText.Range range(EStructuralFeature feature) {
		if (feature == Literals.WALL__FLOOR_RIGHT || feature == Literals.WALL__BOW) {
			return LengthText.Range.ANY;
		}
		return SIZES.contains(feature) ? LengthText.Range.ABOVE_ZERO : LengthText.Range.ZERO_OR_MORE;
	}

	private static MeasureUnit.Kind kind(EStructuralFeature feature) {
		if (feature == Literals.ROOM__AIR || feature == Literals.ROOM__SURFACE_TEMPERATURE) {
			return MeasureUnit.Kind.TEMPERATURE;
		}
		if (feature == Literals.ROOM__FAN) {
			return MeasureUnit.Kind.AIR_FLOW;
		}
		return feature == Literals.ROOM__HUMIDITY || feature == Literals.HOME__TAX ? MeasureUnit.Kind.SHARE : MeasureUnit.Kind.MASS;
	}

	private static WholeNumberText wholeNumber(EStructuralFeature feature) {
		if (feature == Literals.HOME__BUILT) {
			return new WholeNumberText(OLDEST_HOUSE, Year.now().getValue());
		}
		if (feature == Literals.BOX__GANG) {
			return new WholeNumberText(1, MOST_GANGS);
		}
		return new WholeNumberText(1, feature == Literals.PAINT__SCRUB ? SCRUB_CLASSES : MOST_COATS);
	}

	private Optional<Choices> choices(EStructuralFeature feature) {
		EClassifier type = feature.getEType();
		if (type instanceof EEnum values) {
			List<Object> all = new ArrayList<>(values.getELiterals().stream().map(EEnumLiteral::getInstance).toList());
			return Optional.of(new Choices(all, value -> words.of(type, (Enumerator) value)));
		}
		if (type == EcorePackage.Literals.EBOOLEAN_OBJECT) {
			return Optional.of(new Choices(Arrays.asList(null, Boolean.TRUE, Boolean.FALSE), this::yesOrNo));
		}
		if (type == Literals.LENGTH_UNIT) {
			return Optional.of(new Choices(List.<Object>of(LengthUnit.INCH, LengthUnit.MILLIMETRE), value -> words.word("unit." + ((LengthUnit) value).symbol()))); //$NON-NLS-1$
		}
		return feature == Literals.BRIEF__PATTERN ? Optional.of(briefChoices.wallPatterns()) : Optional.empty();
	}

	private String yesOrNo(Object value) {
		return words.word(value == null ? "not-recorded" : Boolean.TRUE.equals(value) ? "yes" : "no"); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
	}
}
