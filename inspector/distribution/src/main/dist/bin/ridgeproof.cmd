@echo off
rem Runs Ridgeproof on the Java runtime beside it, or on an installed one of version 17 or newer.
rem Kept in step with the shell launcher by a test of its text. No Windows machine has run it yet.
setlocal
set "home=%~dp0.."
set "jar=%home%\app\ridgeproof.jar"
set "archive=%home%\app\classes.jsa"
set "cache=%home%\app\classes.aot"
set "java="
call :consider "%home%\runtime\bin\java.exe"
call :consider "%home%\..\runtime\bin\java.exe"
if defined JAVA_HOME call :consider "%JAVA_HOME%\bin\java.exe"
for %%j in (java.exe) do call :consider "%%~$PATH:j"
if not defined java (
  echo ridgeproof: Java 17 or newer is needed: install a runtime, or set JAVA_HOME to one 1>&2
  exit /b 70
)

rem For one file or two the thorough compiler costs more time than it saves; a folder or a demonstration earns it back.
set "quick="
set /a files=0
set /a folders=0
:count
if "%~1"=="" goto counted
if exist "%~1\" (set /a folders+=1) else if exist "%~1" set /a files+=1
shift
goto count
:counted
if %folders% equ 0 if %files% geq 1 if %files% leq 2 set "quick=-XX:TieredStopAtLevel=1"

rem The JVM passes over what was kept by another Java or for another place; it would say so among the lines of a report. Moving
rem all of it to a random place at each start, and compiling ahead what a longer run needed, costs a short command more than it saves.
set "ready="
if exist "%cache%" (set ready=-XX:AOTCache="%cache%") else if exist "%archive%" set ready=-XX:SharedArchiveFile="%archive%" -Xshare:auto
set "silent=-Xlog:disable -XX:+IgnoreUnrecognizedVMOptions -XX:+UnlockDiagnosticVMOptions -XX:ArchiveRelocationMode=0 -XX:-AOTReplayTraining"
"%java%" -XX:+UseSerialGC -XX:-UsePerfData %silent% %ready% %quick% -jar "%jar%" %*
exit /b %errorlevel%

rem Takes a java.exe of version 17 or newer, unless one was found before. The file beside it tells its version.
:consider
if defined java exit /b 0
if "%~1"=="" exit /b 0
if not exist "%~1" exit /b 0
set "version="
if exist "%~dp1..\release" for /f "usebackq tokens=2 delims==." %%v in (`findstr /b "JAVA_VERSION=" "%~dp1..\release"`) do set "version=%%~v"
if not defined version for /f "tokens=3" %%v in ('""%~1" -version 2^>^&1 ^| findstr /c:" version ""') do for /f "delims=." %%n in ("%%~v") do set "version=%%n"
if not defined version exit /b 0
set "version=%version:"=%"
if %version% geq 17 set "java=%~1"
exit /b 0
