Hearthcloth comes with work of others. Each piece is listed with its licence; where there are two, either may be chosen,
and Hearthcloth takes the first. The full texts lie in the pieces themselves (META-INF) and in the folder "licences" of
what is installed. Made by the build from what is really packed.

Libraries of Java:
<#list dependencyMap as e>
<#assign project = e.getKey()/>
- ${project.groupId}:${project.artifactId} ${project.version}: ${e.getValue()?join(" or ")}
</#list>

In the pages of the workroom:
- three.js: MIT (web/three/LICENSE)
- htmx.org: 0BSD

Letters, on paper and on pages:
- TeaVM class library, compiled into the idea page (idea/planner.js.gz): Apache-2.0 (https://teavm.org)
- Source Sans 3: OFL-1.1 (hearthcloth/draw/letters/OFL.txt)
- Noto Sans KR and Noto Sans JP, the letters of KS X 1001 and most of JIS X 0208: OFL-1.1 (hearthcloth/draw/letters/OFL-Noto.txt)

Inside the library sqlite-jdbc:
- SQLite: in the public domain

Where a Java runtime is installed with Hearthcloth:
- OpenJDK: GPL-2.0 with the Classpath exception, and pieces of its own (the folder "legal" of the runtime)
