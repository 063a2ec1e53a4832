@echo off
rem Starts Loamlight from the jar beside this script. The first run makes an archive of the loaded classes in
rem %LOCALAPPDATA%\loamlight; later runs start faster with it. Set LOAMLIGHT_ARCHIVE=off to do without.
setlocal
set "JAR=%~dp0loamlight.jar"
set "JAVA=java"
if defined JAVA_HOME set "JAVA=%JAVA_HOME%\bin\java"
set "FLAGS=-XX:TieredStopAtLevel=1 -XX:+UseSerialGC -XX:-UsePerfData -Xshare:auto -Xlog:disable -Xlog:all=error:stderr"
if "%LOAMLIGHT_ARCHIVE%"=="off" goto plain
if not defined LOCALAPPDATA goto plain
set "ARCHIVE=%LOCALAPPDATA%\loamlight\@jar.sha256@.jsa"
if exist "%ARCHIVE%" goto shared
if not exist "%LOCALAPPDATA%\loamlight" mkdir "%LOCALAPPDATA%\loamlight" 2>nul
"%JAVA%" -XX:ArchiveClassesAtExit="%ARCHIVE%" -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -XX:-UsePerfData -Xlog:disable -jar "%JAR%" prepare >nul 2>nul
:shared
"%JAVA%" -XX:SharedArchiveFile="%ARCHIVE%" %FLAGS% -jar "%JAR%" %*
exit /b %ERRORLEVEL%
:plain
"%JAVA%" %FLAGS% -jar "%JAR%" %*
exit /b %ERRORLEVEL%
