/**
 * Rules between the fields of a record, as annotations on it. The validator holds them, the contract states them, and a fault
 * says them in words; a record that bears them needs no code.
 */
package wayside.server.binding.rule;
