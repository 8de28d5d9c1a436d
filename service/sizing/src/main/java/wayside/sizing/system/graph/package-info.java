/** A system as a graph: its parts, and the cables between them. Laws, answer, diagram and lists of parts read this one structure. */
package wayside.sizing.system.graph;
