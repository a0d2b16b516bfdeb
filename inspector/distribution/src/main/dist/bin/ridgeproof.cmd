@echo off
rem Runs Ridgeproof on the Java runtime beside it, or on an installed one of version 17 or newer.
rem Kept in step with the shell launcher by a test of its text. No Windows machine has run it yet.
setlocal
set "home=%~dp0.."
set "jar=%home%\app\ridgeproof.jar"
set "java="
if exist "%home%\runtime\bin\java.exe" set "java=%home%\runtime\bin\java.exe"
if not defined java if defined JAVA_HOME if exist "%JAVA_HOME%\bin\java.exe" set "java=%JAVA_HOME%\bin\java.exe"
if not defined java for %%j in (java.exe) do if not "%%~$PATH:j"=="" set "java=%%~$PATH:j"
if not defined java (
  echo ridgeproof: Java 17 or newer is needed: install a runtime, or set JAVA_HOME to one 1>&2
  exit /b 70
)
set "archive="
if exist "%home%\app\classes.jsa" set archive=-XX:SharedArchiveFile="%home%\app\classes.jsa" -Xshare:auto -Xlog:disable
"%java%" -XX:+UseSerialGC -Dfile.encoding=UTF-8 %archive% -jar "%jar%" %*
exit /b %errorlevel%
