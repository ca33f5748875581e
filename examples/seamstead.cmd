@echo off
rem Runs the example programs. Builds them once; set SEAMSTEAD_REBUILD=1 to build again after a change.
setlocal
set "here=%~dp0"
set "here=%here:~0,-1%"
for %%I in ("%here%\..") do set "root=%%~fI"
set "launch=%here%\launch\target\run"
set "main=io.github.seamstead.examples.cli.Main"
set "java=java"
set "jar=jar"
if defined JAVA_HOME if exist "%JAVA_HOME%\bin\java.exe" (
  set "java=%JAVA_HOME%\bin\java.exe"
  set "jar=%JAVA_HOME%\bin\jar.exe"
)
"%java%" -version >nul 2>&1
if errorlevel 1 (
  echo seamstead: no Java was found; install a JDK of version 17 or later, and put it on the PATH or set JAVA_HOME 1>&2
  exit /b 3
)
if "%SEAMSTEAD_REBUILD%"=="1" if exist "%launch%" rmdir /s /q "%launch%"
if exist "%launch%\stamp" goto start

echo seamstead: building once, this takes a minute or two 1>&2
pushd "%root%"
call mvn -q -B -pl examples/launch -am compile
if errorlevel 1 (
  popd
  echo seamstead: the build failed 1>&2
  exit /b 3
)
popd
if not exist "%launch%" mkdir "%launch%"
rem One jar of all modules: what each of them brings, such as the licence, stands in it once, and no module descriptor.
if exist "%launch%\classes" rmdir /s /q "%launch%\classes"
for %%m in ("%root%\shared" "%root%\geometry" "%root%\materials" "%root%\assembly" "%root%\api" "%here%") do xcopy /e /i /y /q "%%~m\target\classes" "%launch%\classes" >nul
if exist "%launch%\classes\module-info.class" del "%launch%\classes\module-info.class"
"%jar%" --create --file "%launch%\seamstead.jar" --no-compress -C "%launch%\classes" .
if errorlevel 1 exit /b 3
rmdir /s /q "%launch%\classes"
set /p deps=<"%here%\launch\target\class-path.txt"
"%java%" -XX:ArchiveClassesAtExit="%launch%\seamstead.jsa" -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -cp "%launch%\seamstead.jar;%deps%" %main% plan "%here%\jobs\seed-loft.json" --out "%launch%\rehearsal" >nul 2>&1
if exist "%launch%\rehearsal" rmdir /s /q "%launch%\rehearsal"
type nul >"%launch%\stamp"

:start
set /p deps=<"%here%\launch\target\class-path.txt"
"%java%" -XX:SharedArchiveFile="%launch%\seamstead.jsa" -Xshare:auto -Xlog:disable -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -XX:-UsePerfData -Xmx256m -cp "%launch%\seamstead.jar;%deps%" %main% %*
exit /b %errorlevel%
