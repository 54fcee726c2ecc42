@echo off
rem Runs Hearthcloth out of the folder this script lies in; needs a Java 17 or later, nothing else.
setlocal
set "JAVA=%~dp0runtime\bin\java.exe"
if exist "%JAVA%" goto run
set "JAVA=java"
if defined JAVA_HOME set "JAVA=%JAVA_HOME%\bin\java"
"%JAVA%" -version >nul 2>&1
if errorlevel 1 goto nojava
:run
rem Fractions and the like come out right only so.
chcp 65001 >nul 2>&1
"%JAVA%" -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -Xmx512m -Djava.awt.headless=true -cp "%~dp0hearthcloth.jar;%~dp0lib\*" hearthcloth.Main %*
exit /b %errorlevel%
:nojava
echo Hearthcloth needs Java, version 17 or later; install it and try again.
if "%~1"=="" pause
exit /b 2
