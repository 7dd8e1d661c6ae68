/** The package in which JShell puts the classes of cells; its name is JShell's. Holds one class of ours. */
package REPL;
