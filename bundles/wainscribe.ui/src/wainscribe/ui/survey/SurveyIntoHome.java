// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.survey;

import static java.util.Objects.requireNonNull;

import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.nio.file.Path;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.SubMonitor;
import org.eclipse.jface.operation.IRunnableWithProgress;

import wainscribe.model.Room;
import wainscribe.model.storage.HomeFolder;
import wainscribe.survey.Survey;
import wainscribe.survey.SurveyException;
import wainscribe.survey.SurveyImport;
import wainscribe.survey.SurveyReader;

/** Reads a survey again and writes what it says into a home's files; nothing is written if anything is wrong. */
final class SurveyIntoHome implements IRunnableWithProgress {

	private final Path file;
	private final Path directory;

	SurveyIntoHome(Path file, Path directory) {
		this.file = requireNonNull(file);
		this.directory = requireNonNull(directory);
	}

	@Override
	public void run(IProgressMonitor monitor) throws InvocationTargetException {
		SubMonitor progress = SubMonitor.convert(monitor, Messages.SurveyIntoHome_Task, 3);
		try {
			Survey survey = new SurveyReader(SurveyPage.patterns()).read(file).orRefuse();
			progress.worked(1);
			HomeFolder folder = HomeFolder.open(directory);
			SurveyImport.Result result = new SurveyImport().into(survey, folder.home(), folder.rooms());
			progress.worked(1);
			for (Room room : result.rooms()) {
				if (!folder.rooms().contains(room)) {
					folder.add(room);
				}
			}
			folder.save();
			progress.worked(1);
		} catch (IOException | SurveyException e) {
			throw new InvocationTargetException(e);
		}
	}
}
