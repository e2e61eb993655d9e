// SPDX-License-Identifier: EPL-2.0
package wainscribe.model.generator;

import static java.util.Objects.requireNonNull;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;

import org.eclipse.emf.codegen.ecore.generator.Generator;
import org.eclipse.emf.codegen.ecore.generator.GeneratorAdapterFactory;
import org.eclipse.emf.codegen.ecore.genmodel.GenModel;
import org.eclipse.emf.codegen.ecore.genmodel.GenModelPackage;
import org.eclipse.emf.codegen.ecore.genmodel.generator.GenBaseGeneratorAdapter;
import org.eclipse.emf.codegen.ecore.genmodel.generator.GenModelGeneratorAdapterFactory;
import org.eclipse.emf.common.util.BasicMonitor;
import org.eclipse.emf.common.util.Diagnostic;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.EcorePackage;
import org.eclipse.emf.ecore.plugin.EcorePlugin;
import org.eclipse.emf.ecore.resource.ResourceSet;
import org.eclipse.emf.ecore.resource.impl.ResourceSetImpl;
import org.eclipse.emf.ecore.xmi.impl.EcoreResourceFactoryImpl;

/** Writes the code of the model from its definition, in plain Java, without an Eclipse around it. */
public final class ModelGenerator {

	private static final String PROJECT = "wainscribe.model"; //$NON-NLS-1$
	private static final String GENMODEL = "model/wainscribe.genmodel"; //$NON-NLS-1$
	private static final String GENERATED = "src-gen"; //$NON-NLS-1$

	private final Path bundle;

	/**
	 * Prepares a run.
	 *
	 * @param bundle folder of the model bundle, with {@code model/wainscribe.genmodel} in it; {@code src-gen} there is
	 *               replaced
	 */
	public ModelGenerator(Path bundle) {
		this.bundle = requireNonNull(bundle).toAbsolutePath().normalize();
	}

	/**
	 * Runs the generator.
	 *
	 * @param arguments the folder of the model bundle
	 * @throws IOException if the folder cannot be written
	 */
	public static void main(String[] arguments) throws IOException {
		if (arguments.length != 1) {
			throw new IllegalArgumentException("expected one argument, the folder of the model bundle"); //$NON-NLS-1$
		}
		new ModelGenerator(Path.of(arguments[0])).generate();
	}

	/**
	 * Replaces the generated code by what the definition gives now, so that a class taken out of the definition also
	 * goes.
	 *
	 * @throws IOException           if files cannot be written
	 * @throws IllegalStateException if the definition is not sound
	 */
	public void generate() throws IOException {
		GenModel model = load();
		deleteTree(bundle.resolve(GENERATED));
		GeneratorAdapterFactory.Descriptor.Registry.INSTANCE.addDescriptor(GenModelPackage.eNS_URI,
			GenModelGeneratorAdapterFactory.DESCRIPTOR);
		Generator generator = new Generator();
		generator.setInput(model);
		Diagnostic result = generator.generate(model, GenBaseGeneratorAdapter.MODEL_PROJECT_TYPE, new BasicMonitor());
		if (result.getSeverity() >= Diagnostic.ERROR) {
			throw new IllegalStateException(result.toString());
		}
	}

	private GenModel load() {
		// reading the two constants registers the packages
		requireNonNull(EcorePackage.eINSTANCE);
		requireNonNull(GenModelPackage.eINSTANCE);
		ResourceSet resources = new ResourceSetImpl();
		for (String extension : new String[] { "ecore", "genmodel" }) { //$NON-NLS-1$ //$NON-NLS-2$
			resources.getResourceFactoryRegistry().getExtensionToFactoryMap().put(extension, new EcoreResourceFactoryImpl());
		}
		EcorePlugin.getPlatformResourceMap().put(PROJECT, URI.createFileURI(bundle + "/")); //$NON-NLS-1$
		resources.getURIConverter().getURIMap().putAll(EcorePlugin.computePlatformURIMap(false));
		URI location = URI.createFileURI(bundle.resolve(GENMODEL).toString());
		GenModel model = (GenModel) resources.getResource(location, true).getContents().get(0);
		model.reconcile();
		model.setCanGenerate(true);
		model.setUpdateClasspath(false);
		return model;
	}

	private static void deleteTree(Path folder) throws IOException {
		if (!Files.exists(folder)) {
			return;
		}
		try (Stream<Path> paths = Files.walk(folder)) {
			for (Path path : paths.sorted((a, b) -> b.compareTo(a)).toList()) {
				Files.delete(path);
			}
		}
	}
}
