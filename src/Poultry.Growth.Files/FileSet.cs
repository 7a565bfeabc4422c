namespace Poultry.Growth.Files;

/// <summary>Files that belong together: all are written or none is.</summary>
internal static class FileSet
{
    /// <summary>
    /// Writes each file beside its place, then moves all into place, the last one named last: it is the one that counts. If a move fails, those before it are taken
    /// back.
    /// </summary>
    /// <param name="folder">Made where it does not exist, with the folders of the files; its own folder must.</param>
    /// <param name="files">Where, and what; a file without text is removed where it exists.</param>
    /// <returns>What stood in the way, in one line; null where all is written.</returns>
    public static string? Replace(string folder, IReadOnlyList<(string Path, string? Text)> files)
    {
        string mark = "." + Path.GetRandomFileName() + ".part";
        List<string> made = [], moved = [];
        try
        {
            if (Path.GetDirectoryName(Path.GetFullPath(folder)) is { } parent && !Directory.Exists(parent))
            {
                return FileProblem.Quoted(folder) + " lies in a folder that does not exist; expected one that does";
            }

            foreach ((string path, string? text) in files.Where(file => file.Text is not null))
            {
                Make(Path.GetDirectoryName(Path.GetFullPath(path))!, made);
                File.WriteAllText(path + mark, text);
            }

            foreach ((string path, string? text) in files)
            {
                if (File.Exists(path))
                {
                    File.Copy(path, path + mark + ".old");
                }

                moved.Add(path);
                if (text is not null)
                {
                    File.Move(path + mark, path, overwrite: true);
                }
                else if (File.Exists(path))
                {
                    // To delete what is not there is an error where its folder is missing too.
                    File.Delete(path);
                }
            }
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException or NotSupportedException)
        {
            TakeBack(files, moved, made, mark);
            return FileProblem.Quoted(folder) + " cannot be written (" + exception.Message.TrimEnd('.') + "); nothing was changed";
        }

        foreach ((string path, _) in files)
        {
            Discard(path + mark + ".old");
        }

        return null;
    }

    private static void Make(string folder, List<string> made)
    {
        Stack<string> missing = [];
        for (string? at = folder; at is not null && !Directory.Exists(at); at = Path.GetDirectoryName(at))
        {
            missing.Push(at);
        }

        foreach (string at in missing)
        {
            Directory.CreateDirectory(at);
            made.Add(at);
        }
    }

    private static void TakeBack(IReadOnlyList<(string Path, string? Text)> files, List<string> moved, List<string> made, string mark)
    {
        foreach ((string path, string? text) in files)
        {
            Discard(path + mark);
            if (File.Exists(path + mark + ".old"))
            {
                File.Move(path + mark + ".old", path, overwrite: true);
            }
            else if (moved.Contains(path) && text is not null)
            {
                Discard(path);
            }
        }

        foreach (string folder in Enumerable.Reverse(made).Where(folder => !Directory.EnumerateFileSystemEntries(folder).Any()))
        {
            Directory.Delete(folder);
        }
    }

    /// <summary>Removes a file of ours; one that cannot be removed does no harm where it lies.</summary>
    private static void Discard(string path)
    {
        try
        {
            File.Delete(path);
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
        {
            // It ends in the mark, so that no reader takes it for a table.
        }
    }
}
