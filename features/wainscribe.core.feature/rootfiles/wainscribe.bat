@echo off
rem SPDX-License-Identifier: EPL-2.0
rem wainscribe COMMAND ...     runs one command without a display
rem wainscribe --desktop ...   opens the drawing table
setlocal
set "INSTALL=%~dp0"
if defined JAVA_HOME (set "JAVA=%JAVA_HOME%\bin\java.exe") else (set "JAVA=java.exe")
for %%L in ("%INSTALL%plugins\org.eclipse.equinox.launcher_*.jar") do set "LAUNCHER=%%~L"
if "%~1"=="--desktop" goto desktop
set "SETTLED=%LOCALAPPDATA%\wainscribe\headless-%RANDOM%%RANDOM%"
"%JAVA%" -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -Djava.awt.headless=true -Dstdout.encoding=UTF-8 -Dstderr.encoding=UTF-8 "-Djava.util.logging.config.file=%INSTALL%logging.properties" -jar "%LAUNCHER%" -nosplash -application wainscribe.cli.application -data @none -configuration "%SETTLED%" %*
set "CODE=%ERRORLEVEL%"
rmdir /s /q "%SETTLED%" 2>nul
exit /b %CODE%
:desktop
"%JAVA%" "-Djava.util.logging.config.file=%INSTALL%logging.properties" -jar "%LAUNCHER%" -nosplash -data "%USERPROFILE%\wainscribe"
exit /b %ERRORLEVEL%
