# Completion of `panside` for bash. What can be typed is asked of the program itself: `panside [COMMAND] --help`.
_panside() {
    local word=${COMP_WORDS[COMP_CWORD]} before=${COMP_WORDS[COMP_CWORD - 1]} command='' said i
    COMPREPLY=()
    said=$("${COMP_WORDS[0]}" --help 2>/dev/null) || return 0
    local commands
    commands=$(sed -n '/^Subcommands:/,/^$/s/^  \([a-z]\{1,\}\) .*/\1/p' <<<"$said")
    for ((i = 1; i < COMP_CWORD; ++i)); do
        if grep -qx -e "${COMP_WORDS[i]}" <<<"$commands"; then
            command=${COMP_WORDS[i]}
            break
        fi
    done
    [ -z "$command" ] || said=$("${COMP_WORDS[0]}" "$command" --help 2>/dev/null) || return 0
    # --option TEXT:{one,other}
    local choices
    choices=$(sed -n "s/^  $before [A-Z]*:{\([a-z,]*\)}.*/\1/p" <<<"$said" | tr ',' '\n')
    if [ -n "$choices" ]; then
        mapfile -t COMPREPLY < <(compgen -W "$choices" -- "$word")
    elif [[ $word == -* ]]; then
        mapfile -t COMPREPLY < <(compgen -W "$(grep -o -e '^  -[-a-z,]*' <<<"$said" | tr ', ' '\n\n')" -- "$word")
    elif [ "$command" = reckon ] && [ "$before" = reckon ]; then
        mapfile -t COMPREPLY < <(compgen -W "$(sed -n 's/^  \([a-z]\{1,\}\)  .*/\1/p' <<<"$said")" -- "$word")
    elif [ -z "$command" ] && [[ $before != --* || $before == --rehearsal || $before == --night || $before == --day ]]; then
        mapfile -t COMPREPLY < <(compgen -W "$commands" -- "$word")
    else
        mapfile -t COMPREPLY < <(compgen -f -- "$word")
    fi
}
complete -o filenames -F _panside panside
